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

  private void planWithoutAir() {
    planPublishedSmelt();
    session.edit("No air", () -> trial.getValues().removeIf(v -> v.getVariable().equals("air_flow")));
  }

  /** Natural draught gets its air from the hot column, with openings as stated; bellows without numbers do not. */
  @Test
  void naturalDraughtIsReckonedAndBellowsAreAskedFor() {
    planWithoutAir();
    assertTrue(forecast().findings().stream().anyMatch(f -> f.code().equals("forecast.drawn")));
    plan(Stage.PLANNED, "air_device", "natural draught", "");
    plan(Stage.PLANNED, "inlet_bore", "60", "mm");
    plan(Stage.PLANNED, "inlet_count", "4", "");
    TrialForecast drawn = forecast();
    assertTrue(drawn.findings().stream().noneMatch(f -> f.code().equals("forecast.drawn") || f.code().equals("forecast.openings")), drawn.findings().toString());
    var air = drawn.get(BurnQuantity.AIR).orElseThrow();
    assertTrue(air.low() < air.median() && air.median() < air.high() && air.median() < 650e-3 / 60, air.toString());
    session.edit("Bellows", () -> trial.getValues().removeIf(v -> v.getVariable().equals("air_device")));
    plan(Stage.PLANNED, "air_device", "bag bellows", "");
    assertTrue(forecast().findings().stream().anyMatch(f -> f.code().equals("forecast.missing")));
  }

  /** 3 kg between 10 and 20 mm and 1 kg between 20 and 40: 4/(3·ln 2/10 + ln 2/20) = 16.5 mm, before the typed 30 mm. */
  @Test
  void sieveBandsOfTheCharcoalComeBeforeTheTypedSize() {
    planPublishedSmelt();
    plan(Stage.PLANNED, "charcoal_size", "30", "mm");
    double typed = forecast().get(BurnQuantity.BED_PRESSURE).orElseThrow().central();
    sieve("Oak", daubline.base.Material.CHARCOAL, new double[][] {{.01, .02, 3}, {.02, .04, 1}});
    TrialForecast sieved = forecast();
    assertTrue(sieved.get(BurnQuantity.BED_PRESSURE).orElseThrow().central() > 1.5 * typed);
    assertTrue(sieved.used().stream().anyMatch(t -> t.what().contains("2 sieve bands of lot Oak") && t.value().startsWith("16.5")), sieved.used().toString());
    assertTrue(sieved.used().stream().noneMatch(t -> t.what().startsWith("Charcoal size, planned")), sieved.used().toString());
  }

  /** The trial gets a lot that was sieved; a band is its two meshes in m and its mass in kg. */
  private void sieve(String name, daubline.base.Material material, double[][] bands) {
    session.edit("Sieve", () -> {
      var lot = NEW.createLot();
      lot.setName(name);
      lot.setMaterial(material);
      var sieving = NEW.createTreatment();
      sieving.setStep("sieve");
      for (double[] b : bands) {
        var band = NEW.createSizeBand();
        band.setMeshFrom(b[0]);
        band.setMeshTo(b[1]);
        Readings.put(band, daubline.base.Amount.exact(b[2]));
        sieving.getBands().add(band);
      }
      lot.getTreatments().add(sieving);
      session.study().getLots().add(lot);
      trial.getLots().add(lot);
    });
  }

  /** Sieve bands of the ore are its size classes, each reduced at its own pace; five bands become four classes. */
  @Test
  void sieveBandsOfTheOreAreReducedClassByClass() {
    planPublishedSmelt();
    assertEquals(1, forecast().forecast().orElseThrow().oreClasses().size());
    sieve("Bog", daubline.base.Material.ORE, new double[][] {{0, .001, .1}, {.001, .002, .2}, {.002, .004, 3}, {.004, .008, 4}, {.008, .016, 2}});
    TrialForecast sieved = forecast();
    var classes = sieved.forecast().orElseThrow().oreClasses();
    assertEquals(4, classes.size());
    assertEquals(1, classes.stream().mapToDouble(c -> c.share()).sum(), 1e-12);
    for (int i = 1; i < 4; i++) {
      assertTrue(classes.get(i).size() > classes.get(i - 1).size() && classes.get(i).reduced() < classes.get(i - 1).reduced() + 1e-6, classes.toString());
    }
    assertTrue(sieved.used().stream().anyMatch(t -> t.what().contains("5 sieve bands of lot Bog")), sieved.used().toString());
    assertTrue(sieved.findings().stream().anyMatch(f -> f.code().equals("burn.ore-classes")), sieved.findings().toString());
  }

  /** Vapour pressure over water at 20 °C, 2339 Pa (steam tables), so half saturated air holds 0.0117 mol a mol; its hydrogen is in the gas at the mouth. */
  @Test
  void humidAirBringsHydrogen() {
    planPublishedSmelt();
    TrialForecast dry = forecast();
    assertEquals(0, dry.get(BurnQuantity.TOP_H2).orElseThrow().central(), 0);
    plan(Stage.PLANNED, "air_humidity", "50", "%");
    TrialForecast moist = forecast();
    assertEquals(.0117, moist.plan().inputs().orElseThrow().spread(daubline.engine.process.shaft.ShaftParameter.VAPOUR).median(), 1e-4);
    double hydrogen = moist.get(BurnQuantity.TOP_H2).orElseThrow().central();
    assertTrue(hydrogen > .004 && hydrogen < .0117, hydrogen + "");
    assertTrue(moist.get(BurnQuantity.ZONE_GAS).orElseThrow().central() < dry.get(BurnQuantity.ZONE_GAS).orElseThrow().central() - 20);
    assertTrue(moist.findings().stream().anyMatch(f -> f.code().equals("burn.moist")), moist.findings().toString());
  }

  /** Where neither air nor strokes are known, the people at the bellows set the air; more of them, or more to relieve them, give more. */
  @Test
  void peopleAtTheBellowsSetTheAir() {
    planPublishedSmelt();
    session.edit("Air", () -> trial.getValues().removeIf(v -> v.getVariable().equals("air_flow")));
    plan(Stage.PLANNED, "bellows_operators", "1", "");
    plan(Stage.PLANNED, "bellows_shift", "10", "min");
    double one = forecast().get(BurnQuantity.AIR).orElseThrow().central();
    plan(Stage.PLANNED, "people_count", "4", "");
    TrialForecast four = forecast();
    assertTrue(four.get(BurnQuantity.AIR).orElseThrow().central() > 1.02 * one, one + "");
    assertTrue(four.findings().stream().anyMatch(f -> f.code().equals("forecast.crew") && f.what().contains("4 taking turns of 10 min")), four.findings().toString());
    assertTrue(four.get(BurnQuantity.PEOPLE_BY_SHIFT).orElseThrow().central() > 0);
  }

  @Test
  void repeatsItself() {
    planPublishedSmelt();
    assertEquals(forecast().forecast().orElseThrow().quantities(), forecast().forecast().orElseThrow().quantities());
  }

  /** Whatever is typed, there is a forecast without NaN in what people read first, or findings that say what to mend. */
  @Test
  void impossibleValuesAreSaidAndNeverThrow() {
    for (String[] bad : new String[][] {{"furnace_height", "0", "cm"}, {"ore_total", "0", "kg"}, {"base_internal_diameter", "-3", "cm"},
        {"air_flow", "0", "L/min"}, {"ore_iron", "0", "%"}, {"inlet_bore", "0", "mm"}, {"ore_moisture", "100", "%"}, {"charcoal_total", "0", "kg"}}) {
      session.edit("Clear", () -> trial.getValues().clear());
      plan(Stage.PLANNED, bad[0], bad[1], bad[2]);
      planPublishedSmelt();
      TrialForecast wrong = forecast();
      assertTrue(wrong.findings().stream().anyMatch(f -> f.code().equals("forecast.impossible") && !f.remedy().isEmpty()), bad[0] + " " + wrong.findings());
      assertTrue(wrong.forecast().isEmpty(), bad[0]);
    }
  }

  @Test
  void oddButPossibleValuesAreForecastWithAWarning() {
    for (String[] odd : new String[][] {{"air_flow", "20", "L/min"}, {"air_flow", "9000", "L/min"}, {"ore_moisture", "45", "%"}, {"ore_iron", "80", "%"},
        {"furnace_height", "6", "m"}, {"base_internal_diameter", "5", "cm"}}) {
      session.edit("Clear", () -> trial.getValues().clear());
      plan(Stage.PLANNED, odd[0], odd[1], odd[2]);
      planPublishedSmelt();
      TrialForecast forecast = forecast();
      assertTrue(forecast.findings().stream().anyMatch(f -> f.code().equals("forecast.range")), odd[0] + " " + forecast.findings());
      BurnForecast f = forecast.forecast().orElseThrow();
      for (BurnQuantity q : java.util.List.of(BurnQuantity.BLAST, BurnQuantity.BURN_RATE, BurnQuantity.BLOOM, BurnQuantity.SLAG, BurnQuantity.BLOCKING)) {
        assertTrue(Double.isFinite(f.get(q).median()), odd[0] + " " + odd[1] + " " + q);
      }
    }
  }

  @Test
  void ownSmeltsBeforeItUpdateTheYieldAndNoneAfterIt() throws Exception {
    try (StudySession demonstration = StudySession.read(Path.of("seeds/aldervale"))) {
      java.util.List<TrialForecast> all = TrialForecast.of(demonstration, List.of(), 0, 1);
      assertEquals(1, all.get(0).forecast().orElseThrow().recovery().priorWeight());
      for (int i = 1; i < all.size(); i++) {
        assertTrue(all.get(i).forecast().orElseThrow().recovery().priorWeight() <= all.get(i - 1).forecast().orElseThrow().recovery().priorWeight());
      }
      assertTrue(all.getLast().forecast().orElseThrow().recovery().priorWeight() < .2);
      assertTrue(all.stream().allMatch(f -> f.plan().logged().isPresent() && f.outcome(BurnQuantity.BURN_RATE).isPresent()));
    }
  }

  /** The demonstration's low furnace without tap or pit comes nearest to choking; its log has the blocked inlet. */
  @Test
  void saysWhichTrialChokesFirst() throws Exception {
    try (StudySession demonstration = StudySession.read(Path.of("seeds/aldervale"))) {
      java.util.List<TrialForecast> all = TrialForecast.of(demonstration, List.of("Season 2031"), 40, 1);
      assertEquals("Aldervale 5", InletRace.firstToChoke(all).orElseThrow().trial().name());
      assertEquals("Aldervale 2", InletRace.firstToTap(all).orElseThrow().trial().name());
    }
  }

  @Test
  void tryingAValueChangesTheForecastAndNotTheStudy() {
    planPublishedSmelt();
    Overlay more = Overlay.NONE.with("air_flow", Overlay.value(Variables.standard(), "air_flow", "1300 L/min"));
    double now = TrialPlans.of(session.study()).all().get(0).forecast(0, 1).get(BurnQuantity.BLAST).orElseThrow().central();
    double tried = TrialPlans.of(session.study(), more).all().get(0).forecast(0, 1).get(BurnQuantity.BLAST).orElseThrow().central();
    assertEquals(2, tried / now, 1e-9);
    assertEquals(6, trial.getValues().size());
  }
}
