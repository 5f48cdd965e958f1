package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.inference.Comparison;
import daubline.model.Citation;
import daubline.model.EvidenceSheet;
import daubline.model.Study;
import daubline.ui.compare.Selection;
import daubline.ui.grid.Grid;
import daubline.ui.study.OpenStudy;
import java.util.List;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/**
 * What the help page "First steps" says, step by step and by keys and mouse alone: from nothing to two trials ranked against a sheet
 * typed from a report.
 */
class FirstStepsTest {

  @AfterEach
  void clear() throws Exception {
    Selection.set(null);
    Window.clear();
    Hands.forget("first-steps");
  }

  private static void trial(String command, String... found) {
    Hands.menu("Trial", command);
    Hands.page("page.facts");
    Hands.choose("status", "recorded");
    Hands.page("page.values");
    NatTable values = Hands.grid("values");
    Hands.cell(values, "Base internal diameter", "As found");
    Keys.cells(values, found);
  }

  @Test
  void anEmptyStudyBecomesARankedComparison() throws Exception {
    Person.acts(() -> {
      OpenStudy study = Hands.begin("First Steps");
      byte[] empty = Hands.file(study);
      Study model = Hands.model(study);
      Hands.menu("Trial", "New Evidence Sheet");
      Hands.page("page.facts");
      Hands.field("name", "Furnace 3");
      Hands.menu("Trial", "New Citation");
      Hands.field("authors", "Quern, B.");
      Hands.field("year", "2029");
      Hands.field("title", "Digging at Sallow Bank");
      NatTable claims = Hands.grid("claims");
      Mouse.cell(claims, 0, 0);
      Keys.cells(claims, "Base internal diameter", "285 ± 10 mm", "12", "high", "", "");
      Keys.cells(claims, "Base external diameter", "480 ± 20 mm", "12", "high", "", "");
      Keys.cells(claims, "Pit depth", "not preserved", "13", "", "", "");
      Citation report = model.getCitations().get(0);
      assertEquals("Digging at Sallow Bank", report.getTitle());
      EvidenceSheet sheet = model.getSites().get(0).getContexts().get(0).getSheets().get(0);
      assertEquals("Furnace 3", sheet.getName());
      assertEquals(3, sheet.getClaims().size(), "what was typed went to the one sheet there is");
      assertTrue(sheet.getClaims().stream().allMatch(c -> c.getCitation() == report));

      trial("New Trial", "340 ± 5 mm", "560 ± 5 mm");
      trial("New Trial", "288 ± 5 mm", "475 ± 5 mm");
      Hands.perspective("Compare");
      ranked(study);
      Hands.undoneAndDoneAgain(study, empty);
    });
  }

  private static void ranked(OpenStudy study) {
    List<String> names = Hands.model(study).getSeries().get(0).getTrials().stream().map(t -> t.getName()).toList();
    assertEquals(2, names.stream().distinct().count(), "each has a name of its own: " + names);
    Person.await("results", study::isSettled);
    Grid pairs = Hands.of(Hands.grid("pairs"));
    Person.await("both trials", () -> pairs.model().rows() == 2);
    Grid ranking = Hands.of(Hands.grid("ranking"));
    Person.await("the one that was closer comes first", () -> ranking.model().cell(1, 0).text().equals(names.get(1)));
    Person.sees("the other comes after", () -> ranking.model().cell(1, 1).text().equals(names.get(0)));
    Comparison best = Person.see(() -> study.results().orElseThrow().comparisons().stream().filter(c -> c.trialName().equals(names.get(1))).findFirst().orElseThrow());
    assertTrue(best.agreement() > 0.8, "agreement " + best.agreement());
    assertTrue(best.coverage() > 0 && best.coverage() < 0.2, "two diameters are a small part of all that could be tested: " + best.coverage());
  }
}
