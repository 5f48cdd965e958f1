package daubline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.model.Context;
import daubline.model.EvidenceSheet;
import daubline.model.ModelFactory;
import daubline.model.Site;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Evidence and reconstructions through the command line; data invented. */
class EvidenceCommandsTest {

  @TempDir
  Path folder;

  private Path study;
  private String printed;

  @BeforeEach
  void aStudy() throws Exception {
    study = folder.resolve("study");
    try (StudySession session = StudySession.create(study, "Test")) {
      session.edit("site", () -> {
        Site site = ModelFactory.eINSTANCE.createSite();
        Context context = ModelFactory.eINSTANCE.createContext();
        EvidenceSheet sheet = ModelFactory.eINSTANCE.createEvidenceSheet();
        sheet.setName("Furnace 7");
        context.getSheets().add(sheet);
        site.getContexts().add(context);
        session.study().getSites().add(site);
      });
      session.save();
    }
  }

  private int run(Object... arguments) {
    Run run = Run.of(Arrays.stream(arguments).map(Object::toString).toArray(String[]::new));
    printed = run.out() + run.err();
    return run.exit();
  }

  @Test
  void anArcIsReckonedAndEntered() {
    assertEquals(0, run("arc", "--chord", "400 ± 2 mm", "--rise", "150 ± 2 mm", "--into", study, "--sheet", "furnace 7"), printed);
    assertTrue(printed.contains("D = h + c²/(4h)") && printed.contains("D = 416.7 ± 3.1 mm"), printed);
    assertEquals(0, run("where", study, "base_internal_diameter"), printed);
    assertTrue(printed.contains("h as typed: 150 ± 2 mm"), printed);
  }

  @Test
  void anArcThatCannotBeReckonedSaysWhy() {
    assertEquals(1, run("arc", "--chord", "400 mm", "--rise", "0"));
    assertTrue(printed.contains("h: “0” gives no diameter"), printed);
    assertEquals(1, run("arc", "--chord", "400 mm"));
    assertTrue(printed.contains("--chord and --rise"), printed);
    assertEquals(1, run("arc", "--chord", "400", "--rise", "150", "--into", study, "--sheet", "Furnace 9"));
    assertTrue(printed.contains("Furnace 7"), printed);
  }

  @Test
  void twoReconstructionsAreComparedByTheirDifferences() {
    assertEquals(0, run("reconstructions", "seeds/aldervale"), printed);
    assertTrue(printed.contains("Tapping shaft: 8 choices: evidence 5, analogy 1, practical need 1, guess 1; guesses 12"), printed);
    assertEquals(0, run("reconstructions", "seeds/aldervale", "tapping shaft", "Slag-pit shaft"), printed);
    assertTrue(printed.contains("Furnace height") && printed.contains("850 mm") && printed.contains("800 mm"), printed);
    assertEquals(1, run("reconstructions", "seeds/aldervale", "Tapping shaft", "Nowhere"));
    assertTrue(printed.contains("Low dome"), printed);
    assertEquals(0, run("table", "seeds/aldervale", "bases"), printed);
    assertTrue(printed.contains("Low dome"), printed);
  }

  @Test
  void theSameReconstructionDiffersInNothing() {
    assertEquals(0, run("reconstructions", "seeds/aldervale", "Low dome", "Low dome"), printed);
    assertTrue(printed.contains("differ in 0 properties; 6 are the same"), printed);
  }
}
