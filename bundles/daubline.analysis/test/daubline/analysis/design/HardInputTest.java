package daubline.analysis.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Finding;
import daubline.base.TrialStatus;
import daubline.engine.design.Progress;
import daubline.engine.design.Strata;
import daubline.engine.design.advise.Question;
import daubline.engine.design.learn.Effect;
import daubline.model.Trial;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Series that are empty, contradictory or unlucky get a finding, never an exception out of the engine nor a number that is none. */
class HardInputTest {

  @TempDir
  Path folder;

  private static SeriesEffects effects(PlannedSeries planned, String variable) {
    BurntTrials burnt = BurntTrials.of(planned.study(), planned.brief(), false);
    Outcome outcome = Outcome.of(planned.study(), planned.study().variables().get(variable), burnt.trials());
    return SeriesEffects.of(planned.study(), planned.brief(), burnt, outcome, SeriesEffects.Terms.USUAL, 0.95, 1);
  }

  @Test
  void aSeriesOfWhichNothingIsBurntSaysSo() throws Exception {
    try (PlannedSeries planned = new PlannedSeries(folder.resolve("s"), Question.WHICH_MATTER)) {
      planned.factors();
      SeriesEffects effects = effects(planned, "bloom_mass");
      assertTrue(effects.report().isEmpty());
      assertTrue(effects.findings().stream().anyMatch(f -> f.isError() && f.code().equals("effects.nothing") && !f.remedy().isEmpty()), effects.findings().toString());
    }
  }

  private static NextSteps next(PlannedSeries planned) {
    SeriesEffects effects = effects(planned, "bloom_mass");
    double[] agreement = new double[BurntTrials.of(planned.study(), planned.brief(), false).trials().size()];
    java.util.Arrays.fill(agreement, Double.NaN);
    return NextSteps.of(new NextSteps.Request(planned.study(), effects, agreement, Foreseen.of(planned.session, planned.series, planned.brief().factors()), Strata.USUAL, 1),
        Progress.NONE);
  }

  private PlannedSeries frozen(int trials) throws Exception {
    PlannedSeries planned = new PlannedSeries(folder.resolve("s"), Question.WHICH_MATTER);
    planned.factors();
    PlanFreezer.freeze(planned.session, planned.series, planned.propose(trials), "now", List.of());
    return planned;
  }

  private static boolean has(List<Finding> findings, String code) {
    return findings.stream().anyMatch(f -> f.code().equals(code));
  }

  @Test
  void aSeriesWithoutFactorsSaysSo() throws Exception {
    try (PlannedSeries planned = new PlannedSeries(folder.resolve("s"), Question.HOW_MUCH)) {
      assertTrue(has(planned.brief().findings(), "design.no-factors"));
      assertTrue(assertThrows(IllegalArgumentException.class, () -> planned.propose(8)).getMessage().contains("no factors"));
      assertTrue(effects(planned, "bloom_mass").report().isEmpty());
      assertThrows(IllegalArgumentException.class, () -> next(planned));
      assertFalse(Season.of(planned.data()).isStated());
    }
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {"air_flow|800 to 400|not below", "air_flow|500|fewer than two", "air_flow|fast; slow|not a number", "air_flow|4 to 8 kg|no unit",
      "furnace_type|shaft|fewer than two", "furnace_type|shaft; tower|not among its words", "no_such_thing|1 to 2|no variable", "air_flow|5e999 to 6e999|no"})
  void aFactorThatCannotBeReadIsRefusedWithTheReason(String variable, String levels, String reason) throws Exception {
    try (PlannedSeries planned = new PlannedSeries(folder.resolve("s"), Question.HOW_MUCH)) {
      SeriesSetup.factor(planned.session, planned.series, variable, levels, false, false);
      List<Finding> findings = planned.brief().findings();
      assertTrue(findings.stream().anyMatch(f -> f.isError() && f.what().contains(reason)), findings.toString());
    }
  }

  @Test
  void rulesThatForbidEverythingOrSayNothingAreNamed() throws Exception {
    try (PlannedSeries planned = new PlannedSeries(folder.resolve("s"), Question.HOW_MUCH)) {
      planned.factors();
      SeriesSetup.forbid(planned.session, planned.series, "Air flow at least 0.4 m³/min", "all of it");
      assertTrue(has(planned.brief().findings(), "design.nothing-allowed"));
      SeriesSetup.forbid(planned.session, planned.series, "the moon is full", "");
      assertTrue(planned.brief().findings().stream().anyMatch(f -> f.what().contains("names none of the factors")));
      SeriesSetup.forbid(planned.session, planned.series, "Slag management is dung", "");
      assertTrue(planned.brief().findings().stream().anyMatch(f -> f.what().contains("slag tapping, slag pit")));
    }
  }

  @Test
  void noStockAndWrongStockAreNamed() throws Exception {
    try (PlannedSeries planned = new PlannedSeries(folder.resolve("s"), Question.HOW_MUCH)) {
      planned.factors();
      SeriesSetup.provision(planned.session, planned.series, "charcoal", p -> {
        p.setAvailable(0.0);
        p.setPerTrial(40.0);
      });
      assertTrue(has(Season.of(planned.data()).findings(), "capacity.none"));
      assertTrue(assertThrows(IllegalArgumentException.class, () -> planned.propose(0)).getMessage().contains("charcoal"));
      SeriesSetup.provision(planned.session, planned.series, "ore", p -> p.setMoisture(11.0));
      SeriesSetup.provision(planned.session, planned.series, "clay", p -> {
        p.setAvailable(100.0);
        p.setLosses("a bit");
        p.setMoisture(7.0);
      });
      SeriesSetup.labour(planned.session, planned.series, l -> {
        l.setTeam(1);
        l.setBurnPeople(4);
        l.setFirstDay("2031-13-01");
        l.setLastDay("soon");
      });
      List<String> said = Season.of(planned.data()).findings().stream().filter(Finding::isError).map(Finding::toString).toList();
      assertTrue(said.toString().contains("how much there is") && said.toString().contains("a bit") && said.toString().contains("moisture")
          && said.toString().contains("not a date") && said.toString().contains("wants 4 people"), said.toString());
    }
  }

  @Test
  void oneTrialEqualOutcomesAndFailedTrialsNeverGiveANumberThatIsNone() throws Exception {
    try (PlannedSeries planned = frozen(8)) {
      List<Trial> trials = planned.series.getTrials();
      planned.session.edit("one", () -> PlannedSeries.burn(trials.get(0), "2031-05-24", 3));
      assertTrue(has(effects(planned, "bloom_mass").findings(), "effects.too-few") || effects(planned, "bloom_mass").report().isEmpty());
      assertFalse(next(planned).next().suggestions().isEmpty());
      planned.session.edit("all equal", () -> trials.subList(1, 7).forEach(t -> PlannedSeries.burn(t, "2031-06-01", 3)));
      assertTrue(has(effects(planned, "bloom_mass").findings(), "effects.equal"));
      planned.session.edit("failed", () -> trials.get(7).setStatus(TrialStatus.FAILED));
      SeriesEffects missing = effects(planned, "bloom_mass");
      assertTrue(missing.findings().stream().anyMatch(f -> f.code().equals("effects.missing") && f.where().contains("(failed)")), missing.findings().toString());
      assertTrue(effects(planned, "slag_density").report().isEmpty(), "nobody recorded it");
    }
  }

  @Test
  void unlikelyMixturesOfOutcomesAreJudgedOrRefused() throws Exception {
    try (PlannedSeries planned = frozen(8)) {
      List<Trial> trials = planned.series.getTrials();
      double[] bloom = {3, 3, 3, 3, 3, 3, 3, 9};
      planned.session.edit("burn", () -> {
        for (int i = 0; i < 8; i++) {
          PlannedSeries.burn(trials.get(i), "2031-06-0" + (i + 1), bloom[i]);
        }
      });
      SeriesEffects effects = effects(planned, "bloom_mass");
      for (Effect e : effects.report().orElseThrow().effects()) {
        assertTrue(Double.isFinite(e.estimate()), e.name());
        assertFalse(e.sentence().contains("NaN"), e.sentence());
      }
      assertEquals(3, effects.report().orElseThrow().effects().size());
    }
  }
}
