package daubline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyComparison;
import daubline.analysis.StudyResults;
import daubline.analysis.design.SeriesSetup;
import daubline.base.Amount;
import daubline.base.Stage;
import daubline.base.TrialStatus;
import daubline.charts.Figures;
import daubline.charts.NamedFigure;
import daubline.engine.design.advise.Question;
import daubline.model.ModelFactory;
import daubline.model.Series;
import daubline.model.StagedValue;
import daubline.model.Trial;
import daubline.model.VariableDefinition;
import daubline.session.Readings;
import daubline.session.StudySession;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Clay, sand and dung of the wall as shares of one whole: the triangle is drawn, written by the command and published. */
class SharesOfAWholeTest {

  private static final double[][] SHARES = {{60, 30, 10}, {50, 45, 5}, {75, 15, 10}, {55, 25, 20}, {65, 35, 0}, {70, 20, 10}, {50, 30, 20}};
  private static final double[] BLOOM = {3.1, 2.6, 3.4, 2.2, 3.3, 3.5, 2.1};

  @TempDir
  Path folder;

  private static void variable(StudySession session, String id, String name) {
    VariableDefinition v = ModelFactory.eINSTANCE.createVariableDefinition();
    v.setId(id);
    v.setName(name);
    v.setGroup("Clay and lining");
    v.setType("number");
    v.setQuantity("fraction");
    v.setUnit("%");
    v.setLow(0.0);
    v.setHigh(1.0);
    v.setStages("planned built");
    v.setMeaning("Share of the dry mix.");
    v.setSource("the team's own variable");
    session.study().getVariables().add(v);
  }

  private static void value(Trial trial, Stage stage, String variable, double canonical) {
    StagedValue value = ModelFactory.eINSTANCE.createStagedValue();
    value.setStage(stage);
    value.setVariable(variable);
    Readings.put(value, Amount.exact(canonical));
    trial.getValues().add(value);
  }

  /** A study of seven trials; the last of them breaks the sum where asked. */
  private Path study(String name, boolean sums) throws Exception {
    Path at = folder.resolve(name);
    try (StudySession session = StudySession.create(at, name)) {
      List<String> ids = List.of("wall_clay_share", "wall_sand_share", "wall_dung_share");
      session.edit("Add variables", () -> {
        variable(session, ids.get(0), "Clay in the mix");
        variable(session, ids.get(1), "Sand in the mix");
        variable(session, ids.get(2), "Dung in the mix");
      });
      Series series = SeriesSetup.series(session, "Walls", "which mix", Question.BEST_SETTING);
      SeriesSetup.factor(session, series, ids.get(0), "50 to 75 %", false, false);
      SeriesSetup.factor(session, series, ids.get(1), "15 to 45 %", false, false);
      SeriesSetup.factor(session, series, ids.get(2), "0 to 20 %", false, false);
      session.edit("Burn", () -> {
        for (int i = 0; i < SHARES.length; i++) {
          Trial trial = ModelFactory.eINSTANCE.createTrial();
          trial.setName("T" + (i + 1));
          trial.setStatus(TrialStatus.RECORDED);
          for (int k = 0; k < 3; k++) {
            double broken = !sums && i == 6 && k == 2 ? 10 : 0;
            value(trial, Stage.PLANNED, ids.get(k), (SHARES[i][k] - broken) / 100);
          }
          value(trial, Stage.AS_FIRED, "bloom_mass", BLOOM[i]);
          series.getTrials().add(trial);
        }
      });
      session.save();
    }
    return at;
  }

  private static String effects(Path study, Path figures) {
    PrintStream out = System.out;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
    try {
      assertEquals(0, Commands.run("effects", study.toString(), "Walls", "--on", "bloom_mass", "--figures", figures.toString()), printed.toString(StandardCharsets.UTF_8));
    } finally {
      System.setOut(out);
    }
    return printed.toString(StandardCharsets.UTF_8);
  }

  @Test
  void theTriangleIsDrawnAndPublishedWhereItFits() throws Exception {
    Path study = study("mix", true);
    String said = effects(study, folder.resolve("f"));
    assertTrue(said.contains("shares of one whole") && said.contains("instead of Dung in the mix"), said);
    String svg = Files.readString(folder.resolve("f/mixture.svg"));
    assertTrue(svg.contains("Clay in the mix 85") && svg.contains("Sand in the mix 50") && svg.contains("Dung in the mix 35"), "each corner has the most that the others leave");
    assertFalse(Files.exists(folder.resolve("f/contour.svg")), "no surface over two shares with the third in the middle");
    try (StudySession session = StudySession.read(study)) {
      StudyResults results = StudyComparison.of(session, ComparisonOptions.standard());
      List<String> published = Figures.find("effects").orElseThrow().all(results).stream().map(NamedFigure::id).toList();
      assertTrue(published.stream().anyMatch(id -> id.endsWith("bloom-mass-mixture")), published.toString());
    }
  }

  @Test
  void whereTheSumIsBrokenThereIsNone() throws Exception {
    Path study = study("loose", false);
    assertFalse(effects(study, folder.resolve("f")).contains("shares of one whole"));
    assertFalse(Files.exists(folder.resolve("f/mixture.svg")));
    assertTrue(Files.exists(folder.resolve("f/contour.svg")));
  }
}
