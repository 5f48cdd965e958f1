package daubline.analysis.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.DecimalSign;
import daubline.base.Stage;
import daubline.base.Variables;
import daubline.engine.process.BurnForecast;
import daubline.engine.process.BurnQuantity;
import daubline.model.FurnaceBuild;
import daubline.model.ModelFactory;
import daubline.model.Series;
import daubline.model.StagedValue;
import daubline.model.Trial;
import daubline.session.Readings;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TrialForecastTest {

  private static final ModelFactory NEW = ModelFactory.eINSTANCE;

  @TempDir
  Path temporary;
  private StudySession session;
  private final Trial trial = NEW.createTrial();

  @BeforeEach
  void makeStudy() throws Exception {
    session = StudySession.create(temporary.resolve("study"), "Study");
    session.edit("Fill", () -> {
      Series series = NEW.createSeries();
      trial.setName("P1");
      series.getTrials().add(trial);
      session.study().getSeries().add(series);
    });
  }

  @AfterEach
  void close() {
    session.close();
  }

  private void plan(Stage stage, String variable, String typed, String unit) {
    session.edit("Plan", () -> {
      StagedValue value = NEW.createStagedValue();
      value.setStage(stage);
      assertTrue(Readings.put(value, Variables.standard().get(variable), typed, unit, DecimalSign.POINT).isEmpty());
      trial.getValues().add(value);
    });
  }

  private TrialForecast forecast() {
    return TrialForecast.of(session, List.of("P1"), 40, 7).get(0);
  }

  /** The plan of a published smelt of 18 kg ore of 61 % iron: DM-040, overview of experiments, D. Markewitz, web, 2021. */
  private void planPublishedSmelt() {
    plan(Stage.PLANNED, "base_internal_diameter", "20", "cm");
    plan(Stage.PLANNED, "furnace_height", "63.5", "cm");
    plan(Stage.PLANNED, "air_flow", "650", "L/min");
    plan(Stage.PLANNED, "ore_total", "18", "kg");
    plan(Stage.PLANNED, "ore_iron", "61", "%");
    plan(Stage.PLANNED, "charcoal_total", "38", "kg");
  }

  @Test
  void saysWhatIsMissingAndHowToMendIt() {
    TrialForecast empty = forecast();
    assertTrue(empty.forecast().isEmpty());
    assertEquals(5, empty.findings().stream().filter(f -> f.code().equals("forecast.missing")).count());
    assertTrue(empty.findings().stream().noneMatch(f -> f.remedy().isEmpty()));
  }

  @Test
  void forecastsAPublishedSmeltFromItsPlanAlone() {
    planPublishedSmelt();
    BurnForecast forecast = forecast().forecast().orElseThrow();
    // 650 L/min on 314 cm² is 2.07 L/(min·cm²) by arithmetic
    assertEquals(650e-3 / 60 / (Math.PI * 0.01), forecast.get(BurnQuantity.BLAST).central(), 0.002);
    // published: 4.9 kg bloom; 4.5 h of main sequence for charcoal that includes a preheat of about an hour (its length is not published)
    assertTrue(forecast.get(BurnQuantity.BLOOM).low() < 4.9 && forecast.get(BurnQuantity.BLOOM).high() > 4.9, forecast.get(BurnQuantity.BLOOM).toString());
    assertTrue(forecast.get(BurnQuantity.DURATION).low() < 5.5 * 3600 && forecast.get(BurnQuantity.DURATION).high() > 5.5 * 3600);
    assertFalse(forecast.cautions().isEmpty());
  }

  @Test
  void prefersWhatWasBuiltAndNamesWhereItStands() {
    planPublishedSmelt();
    session.edit("Build", () -> {
      FurnaceBuild build = NEW.createFurnaceBuild();
      StagedValue built = NEW.createStagedValue();
      built.setStage(Stage.AS_BUILT);
      assertTrue(Readings.put(built, Variables.standard().get("base_internal_diameter"), "24", "cm", DecimalSign.POINT).isEmpty());
      build.getValues().add(built);
      session.study().getBuilds().add(build);
      trial.setBuild(build);
    });
    TrialForecast forecast = forecast();
    assertEquals(650e-3 / 60 / (Math.PI * 0.0144), forecast.forecast().orElseThrow().get(BurnQuantity.BLAST).central(), 0.002);
    assertTrue(forecast.used().stream().anyMatch(t -> t.what().equals("Base internal diameter, as built") && t.value().equals("240\u00A0mm")),
        forecast.used().toString());
  }

  @Test
  void repeatsItself() {
    planPublishedSmelt();
    assertEquals(forecast().forecast().orElseThrow().quantities(), forecast().forecast().orElseThrow().quantities());
  }
}
