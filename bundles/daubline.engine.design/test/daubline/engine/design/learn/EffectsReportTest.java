package daubline.engine.design.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.design.Change;
import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Model;
import daubline.engine.design.Progress;
import daubline.engine.design.Space;
import daubline.engine.design.Strata;
import daubline.engine.design.Term;
import daubline.engine.design.catalogue.RegularFraction;
import daubline.engine.design.search.CoordinateExchange;
import daubline.engine.design.search.SearchRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class EffectsReportTest {

  private static List<Factor> measured(int k) {
    return IntStream.range(0, k).mapToObj(i -> Factor.measured("x" + (i + 1), "x" + (i + 1), "", -1, 1)).toList();
  }

  private static EffectsReport report(Design design, Model model, double... y) {
    return EffectsReport.of(new EffectsRequest(design, model, y, "iron", "kg", 0.95, 1));
  }

  private static Effect effect(EffectsReport report, String name) {
    return report.effects().stream().filter(e -> e.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void springsWithoutARepeatAreReadFromTheHalfNormalPlot() {
    // Source: Box & Bisgaard, springs with and without cracks, NIST Dataplot BOXSPRIN: effects 23, −5, 1.5, 1.5, 10, 0, .5;
    // pseudo standard error 2.25; floor of the permutation 2/70.
    List<Factor> factors = measured(3);
    List<Term> terms = new ArrayList<>(Model.interactions(factors).terms());
    terms.add(Term.of(0, 1, 2));
    EffectsReport report = report(new RegularFraction(3).design(factors, 0), new Model(factors, terms), 67, 79, 61, 75, 59, 90, 52, 87);
    assertEquals(EffectsReport.Method.HALF_NORMAL, report.method());
    assertEquals(23, effect(report, "x1").estimate(), 1e-12);
    assertEquals(-5, effect(report, "x2").estimate(), 1e-12);
    assertEquals(10, effect(report, "x1 × x3").estimate(), 1e-12);
    assertEquals(.5, effect(report, "x1 × x2 × x3").estimate(), 1e-12);
    EffectsReport.HalfNormal plot = report.halfNormal().orElseThrow();
    // sizes are divided by the standard error for a variance of one, which is 2/√8 for an effect
    assertEquals(2.25, plot.lenth().error() * 2 / Math.sqrt(8), 1e-12);
    assertEquals("x1", plot.names().get(6));
    assertEquals(2 / 70.0, effect(report, "x1").permutation().floor(), 1e-12);
    assertTrue(effect(report, "x1").sentence().contains("stands out from all the others"), effect(report, "x1").sentence());
    assertTrue(effect(report, "x2").sentence().contains("cannot be told from chance"), effect(report, "x2").sentence());
  }

  @Test
  void whatWasSeenIsNeverCalledTooSmallToBeSeen() {
    // y = 1.6 x1 + x1 x2: the effect is 3.2, its standard error 1 on 4 degrees of freedom, t(0.975, 4) = 2.776 (e-Handbook 1.3.6.7.2)
    Design design = new RegularFraction(3).design(measured(3), 0);
    double[] y = design.settings().stream().mapToDouble(s -> 1.6 * s[0] + s[0] * s[1]).toArray();
    Effect effect = effect(report(design, Model.main(measured(3)), y), "x1");
    assertEquals(3.2, effect.estimate(), 1e-12);
    assertEquals(1, effect.standardError(), 1e-12);
    assertEquals(3.2 - 2.776, effect.low(), 5e-4);
    assertTrue(effect.smallest() > effect.estimate());
    assertFalse(effect.sentence().contains("the sign is open") || effect.sentence().contains("could not"), effect.sentence());
    assertTrue(effect.sentence().contains("would have been seen four times in five, a smaller one less often"), effect.sentence());
  }

  @Test
  void oneFurnaceShowsNothingOfHowFurnacesDiffer() {
    // Five trials at two settings, unequally repeated: the difference of means 2.2, pooled variance (0.08 + 0.02) / 3 by hand.
    List<Factor> factors = measured(1);
    double[][] settings = {{-1}, {1}, {-1}, {1}, {-1}};
    Design design = Design.independent("", factors, settings).inFurnaces(0, 0, 0, 0, 0);
    EffectsReport report = report(design, Model.main(factors), 1.8, 4.1, 2, 4.3, 2.2);
    assertEquals(2.2, effect(report, "x1").estimate(), 1e-12);
    assertEquals(Math.sqrt(0.1 / 3), report.trialDeviation(), 1e-12);
    assertEquals(Math.sqrt(0.1 / 3 * (1 / 2.0 + 1 / 3.0)), effect(report, "x1").standardError(), 1e-12);
    assertEquals(3, effect(report, "x1").freedom());
    assertTrue(Double.isNaN(report.furnaceDeviation()), "furnaces by " + report.furnaceDeviation());
    assertTrue(report.findings().stream().anyMatch(f -> f.code().equals("effects.one-furnace")));
  }

  @Test
  void eddyCurrentProbeOfTheHandbook() {
    // Source: NIST/SEMATECH e-Handbook 5.6.1, data SPLETT3: effects, and the residual deviation as effects enter one by one. (The page
    // prints 0.29750 for the third model; that is the size of an effect, and is not used.)
    List<Factor> factors = measured(3);
    Design design = new RegularFraction(3).design(factors, 0);
    double[] y = {1.70, 4.57, 0.55, 3.39, 1.51, 4.59, 0.67, 4.29};
    List<Term> terms = new ArrayList<>(Model.interactions(factors).terms());
    terms.add(Term.of(0, 1, 2));
    EffectsReport all = report(design, new Model(factors, terms), y);
    double[] published = {3.1025, -.8675, .2125, .1275, .2475, .2975, .1425};
    for (int i = 0; i < 7; i++) {
      assertEquals(published[i], all.effects().get(i).estimate(), 1e-12, all.effects().get(i).name());
    }
    assertEquals(.57272, report(design, new Model(factors, List.of(Term.of(0))), y).trialDeviation(), 5e-6);
    assertEquals(.30429, report(design, new Model(factors, List.of(Term.of(0), Term.of(1))), y).trialDeviation(), 5e-6);
  }

  @Test
  void depositionSurfaceOfTheHandbook() {
    // Source: NIST/SEMATECH e-Handbook 5.4.7.3 (Czitrom & Spagon 1997), uniformity and stress on coded settings.
    double[][] settings = {{1, 0}, {0, 0}, {.71, -.71}, {-.71, .71}, {-1, 0}, {0, 0}, {-.71, -.71}, {0, -1}, {.71, .71}, {0, 1}, {0, 0}};
    List<Factor> factors = measured(2);
    Design design = Design.independent("surface", factors, settings);
    Model model = Model.quadratic(factors);
    EffectsReport uniformity = report(design, model, 4.6, 6.2, 3.4, 6.9, 7.3, 6.4, 8.6, 6.3, 5.1, 5.4, 5);
    assertEquals(EffectsReport.Method.LEAST_SQUARES, uniformity.method());
    double[] b = uniformity.fitted().coefficients();
    double[] expected = {5.866126, -1.909670, -.224081, 1.686173, .133733, .033733};
    for (int i = 0; i < 6; i++) {
      assertEquals(expected[i], b[i], 1e-6, model.name(i));
    }
    assertEquals(.7235398, uniformity.trialDeviation(), 1e-6);
    assertEquals(2 * -2.837729, effect(uniformity, "x1").low(), 1e-5);
    assertEquals(2 * -.981612, effect(uniformity, "x1").high(), 1e-5);
    double[] stress = report(design, model, 8.04, 7.78, 7.58, 7.27, 6.49, 7.69, 6.66, 7.16, 8.33, 8.19, 7.90).fitted().coefficients();
    double[] expectedStress = {7.790040, .735933, .496863, .069431, -.528728, -.118728};
    for (int i = 0; i < 6; i++) {
      assertEquals(expectedStress[i], stress[i], 1e-6, model.name(i));
    }
  }

  @Test
  void corrosionIsJudgedWithFurnacesAsAStratum() {
    Design design = EstimationTest.corrosion();
    EffectsReport report = report(design, Model.interactions(design.factors()), EstimationTest.corrosionOutcome());
    assertEquals(EffectsReport.Method.FURNACES, report.method());
    assertEquals(Math.sqrt(1172.167), report.furnaceDeviation(), 1e-3);
    Effect temperature = effect(report, "temperature [360]");
    assertEquals("furnace", temperature.stratum());
    assertEquals(3, temperature.freedom(), 1e-6);
    assertEquals(9, effect(report, "coating [C1]").freedom(), 1e-6);
    assertTrue(temperature.low() < 0 && temperature.high() > 0 && temperature.sentence().contains("24 trials in 6 furnaces"),
        temperature.sentence());
    assertTrue(report.effects().stream().noneMatch(e -> e.sentence().contains("no effect")));
  }

  @Test
  void heightInTwoFurnacesIsSaidToBeInseparable() {
    List<Factor> factors = List.of(Factor.measured("h", "height", "m", .6, 1.2).changing(Change.EACH_FURNACE),
        Factor.measured("b", "blast", "L/min", 200, 600));
    Design design = Design.independent("two", factors, new double[][] {{-1, -1}, {-1, 1}, {-1, 1}, {1, -1}, {1, 1}, {1, -1}})
        .inFurnaces(0, 0, 0, 1, 1, 1);
    EffectsReport report = report(design, Model.main(factors), 2.1, 3.9, 4.2, 3.0, 5.1, 3.2);
    Effect height = effect(report, "height");
    assertFalse(height.separable());
    assertTrue(Double.isInfinite(height.smallest()) && Double.isNaN(height.low()));
    assertTrue(height.sentence().contains("cannot be separated from furnace-to-furnace variation"), height.sentence());
    Effect blast = effect(report, "blast");
    assertTrue(blast.low() > 1 && blast.high() < 3 && blast.sentence().startsWith("blast from 200 to 600\u00A0L/min: iron +"), blast.sentence());
  }

  @Test
  void aTrialWithoutOutcomeIsLeftOutAndSaid() {
    List<Factor> factors = measured(2);
    Design design = Design.independent("nine", factors, new double[][] {{-1, -1}, {1, -1}, {-1, 1}, {1, 1}, {0, 0}, {0, 0}, {0, 0}, {1, 1}});
    EffectsReport report = report(design, Model.main(factors), 1, 3, 2, 4, 2.6, 2.4, 2.5, Double.NaN);
    assertEquals(7, report.trials());
    assertEquals("effects.missing", report.findings().get(0).code());
    assertEquals(2, effect(report, "x1").estimate(), 0.05);
    assertThrows(IllegalArgumentException.class, () -> report(design, Model.main(factors), 1, 2, Double.NaN, Double.NaN, Double.NaN,
        Double.NaN, Double.NaN, Double.NaN));
  }

  @Test
  void aliasedScreenNamesItsDoublesAndProbabilities() {
    List<Factor> factors = measured(7);
    Design design = RegularFraction.best(8, 7).design(factors, 0);
    double[] y = design.settings().stream().mapToDouble(s -> 10 + 3 * s[0] + 0.1 * s[1] - 0.2 * s[4]).toArray();
    EffectsReport report = report(design, Model.main(factors), y);
    assertEquals(6, effect(report, "x1").estimate(), 1e-12);
    assertTrue(effect(report, "x1").aliases().contains("x2 × x4 or "), effect(report, "x1").aliases());
    double[] active = report.activity().orElseThrow().active();
    for (int f = 1; f < 7; f++) {
      assertTrue(active[0] > active[f]);
    }
  }

  @Test
  void oneThousandCampaignsKeepWhatTheIntervalsPromise() {
    List<Factor> factors = List.of(Factor.measured("h", "height", "m", .6, 1.2).changing(Change.EACH_FURNACE),
        Factor.measured("b", "blast", "L/min", 200, 600), Factor.category("o", "ore", "bog", "rock"));
    Space space = new Space(factors, List.of());
    Model model = Model.main(factors);
    Design design = CoordinateExchange.search(SearchRequest.inFurnaces(space, model, 12, 6, Strata.USUAL, 1), Progress.NONE).design();
    Calibration c = Calibration.run(design, model, new double[] {10, 0, 0, 0}, new Strata(1, 0), 0.9, 1000, 5, Progress.NONE);
    for (int e = 0; e < 3; e++) {
      assertTrue(c.coverage()[e] >= 0.88 && c.coverage()[e] <= 0.92, c.names().get(e) + " " + c.coverage()[e]);
      // ±2.6 standard errors of a rate of one in ten
      assertEquals(0.1, c.alarms()[e], 0.025);
      assertTrue(c.permutationAlarms()[e] <= 0.125, c.names().get(e) + " " + c.permutationAlarms()[e]);
    }
  }

  @Test
  void oneThousandCampaignsWithAFurnaceEachKeepTheirPromiseToo() {
    List<Factor> factors = measured(4);
    Design design = RegularFraction.best(8, 4).design(factors, 3);
    Calibration c = Calibration.run(design, Model.main(factors), new double[] {10, 0, 0, 0, 0}, Strata.NONE, 0.9, 1000, 6, Progress.NONE);
    for (int e = 0; e < 4; e++) {
      assertTrue(c.coverage()[e] >= 0.88 && c.coverage()[e] <= 0.92, c.names().get(e) + " " + c.coverage()[e]);
      assertEquals(0.1, c.alarms()[e], 0.025);
      assertTrue(c.permutationAlarms()[e] <= 0.125, c.names().get(e) + " " + c.permutationAlarms()[e]);
    }
  }

  @Test
  void lenthsRateOfFalseAlarmsIsWhatItSays() {
    double[] critical = Lenth.critical(7, 0.05, 40_000, 1);
    int any = 0;
    int single = 0;
    for (int c = 0; c < 4000; c++) {
      double[] effects = new daubline.engine.stats.RandomStream(c + 900_000L).normals(7);
      double error = Lenth.error(effects);
      double largest = 0;
      for (double v : effects) {
        largest = Math.max(largest, Math.abs(v) / error);
        single += Math.abs(v) / error > critical[0] ? 1 : 0;
      }
      any += largest > critical[1] ? 1 : 0;
    }
    assertEquals(0.05, any / 4000.0, 0.011);
    assertEquals(0.05, single / 28_000.0, 0.006);
  }
}
