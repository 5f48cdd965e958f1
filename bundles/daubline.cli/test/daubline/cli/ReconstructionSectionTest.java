package daubline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.evidence.Hypotheses;
import daubline.base.DecimalSign;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.charts.Figure;
import daubline.charts.FigureWriter;
import daubline.charts.ReconstructionSection;
import daubline.charts.SvgWriter;
import daubline.model.Choice;
import daubline.model.ModelFactory;
import daubline.model.Reconstruction;
import daubline.session.Readings;
import daubline.session.StudySession;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The drawing of a reconstruction follows its choices and says how far it is evidenced. */
class ReconstructionSectionTest {

  @TempDir
  Path folder;

  private static Optional<Figure> figure(StudySession session, Reconstruction r) {
    return ReconstructionSection.of(Hypotheses.of(session, r), Variables.standard());
  }

  private static String svg(Figure figure) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    FigureWriter writer = new SvgWriter();
    writer.write(figure, "Reconstruction", figure.widthMm(), out);
    return out.toString(StandardCharsets.UTF_8);
  }

  private static void choose(StudySession session, Reconstruction r, String variable, String typed) {
    Variable v = Variables.standard().find(variable).orElseThrow();
    session.edit("choice", () -> {
      Choice choice = ModelFactory.eINSTANCE.createChoice();
      assertTrue(Readings.put(choice, v, typed, "mm", DecimalSign.POINT).isEmpty());
      r.getChoices().add(choice);
    });
  }

  @Test
  void theDrawingFollowsTheChoices() throws Exception {
    try (StudySession session = StudySession.create(folder.resolve("study"), "Test")) {
      Reconstruction r = ModelFactory.eINSTANCE.createReconstruction();
      r.setName("Tall");
      session.edit("new", () -> session.study().getReconstructions().add(r));
      assertTrue(figure(session, r).isEmpty(), "nothing is chosen yet");
      choose(session, r, "base_internal_diameter", "300");
      Figure bare = figure(session, r).orElseThrow();
      assertTrue(bare.caption().contains("stub") && bare.caption().contains("no height"), bare.caption());
      choose(session, r, "furnace_height", "900");
      Figure tall = figure(session, r).orElseThrow();
      assertTrue(tall.aspect() > bare.aspect());
      assertTrue(tall.caption().contains("Guessed: base internal diameter, furnace height"), tall.caption());
      assertTrue(count(svg(tall), "stroke-dasharray") > count(svg(bare), "stroke-dasharray"), "what is above the line is dotted");
    }
  }

  @Test
  void theDemonstrationSaysHowHighTheWallStands() throws Exception {
    try (StudySession session = StudySession.read(Path.of("seeds/aldervale"))) {
      Reconstruction r = session.study().getReconstructions().get(0);
      String caption = figure(session, r).orElseThrow().caption();
      assertTrue(caption.contains("210 mm") && caption.contains("Kiln Acre furnace 1"), caption);
      assertEquals(3, session.study().getReconstructions().size());
    }
  }

  private static int count(String text, String part) {
    return text.split(part, -1).length - 1;
  }
}
