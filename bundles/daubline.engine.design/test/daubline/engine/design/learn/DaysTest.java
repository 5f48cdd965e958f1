package daubline.engine.design.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.design.Change;
import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Model;
import daubline.engine.design.Progress;
import daubline.engine.design.Run;
import daubline.engine.design.Strata;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Trials of one day share its weather and its crew: days count as a stratum where they can, and it is said where they cannot. */
class DaysTest {

  private static EffectsReport report(Design design, double... y) {
    return EffectsReport.of(new EffectsRequest(design, Model.main(design.factors()), y, "iron", "kg", 0.95, 7));
  }

  private static Design placed(List<Factor> factors, double[][] settings, int[] furnaces, int[] days) {
    List<Run> runs = new ArrayList<>();
    for (int i = 0; i < settings.length; i++) {
      runs.add(new Run(settings[i], furnaces[i], days[i], true));
    }
    return new Design("days", factors, runs, List.of());
  }

  private static int[] alone(int n) {
    return java.util.stream.IntStream.range(0, n).toArray();
  }

  @Test
  void pairsOfOneDayAreComparedWithinTheDay() {
    // Source: Student 1908, Biometrika 6, 1-25, hours of sleep with two drugs in ten people; here ten days with two trials each. Paired
    // t = 4.0621 on 9 degrees of freedom, difference 1.58, 95 % interval 0.7001142 to 2.4598858 (R's help page of t.test, data set sleep).
    double[] first = {0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0};
    double[] second = {1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};
    double[][] settings = new double[20][];
    int[] days = new int[20];
    double[] y = new double[20];
    for (int i = 0; i < 20; i++) {
      settings[i] = new double[] {i % 2};
      days[i] = i / 2;
      y[i] = i % 2 == 0 ? first[i / 2] : second[i / 2];
    }
    EffectsReport report = report(placed(List.of(Factor.category("d", "drug", "first", "second")), settings, alone(20), days), y);
    assertEquals(EffectsReport.Method.DAYS, report.method());
    Effect drug = report.effects().get(0);
    assertEquals(1.58, drug.estimate(), 1e-10);
    assertEquals(9, drug.freedom(), 1e-6);
    assertEquals(.7001142, drug.low(), 5e-7);
    assertEquals(2.4598858, drug.high(), 5e-7);
    assertTrue(drug.sentence().contains("20 trials on 10 days"), drug.sentence());
    assertTrue(report.dayDeviation() > report.trialDeviation(), "people differ more than nights");
  }

  @Test
  void whatChangesWithTheDayIsJudgedBetweenDays() {
    List<Factor> factors = List.of(Factor.category("w", "weather", "dry", "wet").changing(Change.EACH_DAY), Factor.measured("a", "air", "L/min", 400, 800));
    Design design = placed(factors, new double[][] {{0, -1}, {0, 1}, {0, 1}, {1, -1}, {1, 1}, {1, -1}}, alone(6), new int[] {0, 0, 0, 1, 1, 1});
    EffectsReport report = report(design, 2.1, 3.9, 4.2, 3.0, 5.1, 3.2);
    Effect weather = report.effects().get(0);
    assertEquals("day", weather.stratum());
    assertFalse(weather.separable());
    assertTrue(weather.sentence().contains("cannot be separated from day-to-day variation"), weather.sentence());
    assertTrue(report.effects().get(1).low() > 1, "air is compared within each day");
  }

  @Test
  void furnacesThatHaveADayEachAreSaidToHideIt() {
    List<Factor> factors = List.of(Factor.measured("a", "air", "L/min", 400, 800));
    Design design = placed(factors, new double[][] {{-1}, {1}, {-1}, {1}, {-1}, {1}}, new int[] {0, 0, 1, 1, 2, 2}, new int[] {5, 5, 6, 6, 7, 7});
    EffectsReport report = report(design, 2.1, 3.9, 3.0, 5.1, 1.2, 3.3);
    assertEquals(EffectsReport.Method.FURNACES, report.method());
    assertTrue(report.findings().stream().anyMatch(f -> f.code().equals("effects.days")), report.findings().toString());
  }

  @Test
  void tooFewTrialsForADayAreSaid() {
    List<Factor> factors = List.of(Factor.measured("a", "air", "L/min", 400, 800), Factor.measured("o", "ore", "kg", 18, 26));
    Design design = placed(factors, new double[][] {{-1, -1}, {1, 1}, {-1, 1}, {1, -1}, {-1, 0}, {1, 0}}, new int[] {0, 1, 0, 1, 2, 2}, new int[] {0, 0, 1, 2, 3, 4});
    EffectsReport report = report(design, 2.1, 3.9, 3.0, 5.1, 2.2, 3.3);
    assertTrue(report.findings().stream().anyMatch(f -> f.code().equals("effects.days")) || Double.isFinite(report.dayDeviation()), report.findings().toString());
  }

  @Test
  void campaignsWithDaysAndFurnacesKeepWhatTheIntervalsPromise() {
    List<Factor> factors = List.of(Factor.measured("a", "air", "L/min", 400, 800), Factor.category("c", "crew", "one", "two").changing(Change.EACH_DAY));
    double[][] settings = new double[24][];
    int[] furnaces = new int[24];
    int[] days = new int[24];
    for (int i = 0; i < 24; i++) {
      days[i] = i / 3;
      furnaces[i] = i % 6;
      settings[i] = new double[] {(i + i / 3) % 2 == 0 ? -1 : 1, days[i] % 2};
    }
    Design design = placed(factors, settings, furnaces, days);
    Calibration found = Calibration.run(design, Model.main(factors), new double[] {5, 0, 0}, new Strata(0.5, 1), 0.9, 1000, 3, Progress.NONE);
    for (int e = 0; e < found.coverage().length; e++) {
      // 1 000 campaigns: two standard errors are 1.9 points; with eight days intervals of what changes with the day are rather too wide
      assertTrue(found.coverage()[e] > 0.88 && found.coverage()[e] < 0.96, found.names().get(e) + " " + found.coverage()[e]);
    }
  }

  @Test
  void soFewFurnacesThatTheirDifferenceIsUnknownAreComparedWithinOnly() {
    // three furnaces; what REML borrows between them has less than one degree of freedom. Worked by hand: furnace 0 has 18 kg: 3.1,
    // 24 kg: 5.0 and 5.2; furnace 1 24 kg: 4.1 and 4.5; furnace 2 26 kg: 6.0 and 6.2: slope (5.1 - 3.1) / 6 kg, pure squares 0.02 + 0.08 + 0.02
    List<Factor> factors = List.of(Factor.category("s", "slag", "tapped", "pit").changing(Change.EACH_FURNACE), Factor.measured("o", "ore", "kg", 18, 26));
    double[] ore = {18, 24, 24, 24, 24, 26, 26};
    double[][] settings = new double[7][];
    for (int i = 0; i < 7; i++) {
      settings[i] = new double[] {i == 3 || i == 4 ? 1 : 0, (ore[i] - 22) / 4};
    }
    Design design = placed(factors, settings, new int[] {0, 0, 0, 1, 1, 2, 2}, alone(7));
    Estimates found = LayerByLayer.of(design, Model.main(factors).matrix(design.settings()), new int[] {0, 1, 2}, new double[] {3.1, 5.0, 5.2, 4.1, 4.5, 6.0, 6.2},
        Layers.of(design, Model.main(factors).matrix(design.settings()))).orElseThrow();
    assertEquals(4 * 2 / 6.0, found.coefficients()[2], 1e-12);
    assertEquals(3, found.freedom()[2], 1e-12);
    assertEquals(0.12 / 3, found.trialVariance(), 1e-12);
    assertEquals(0, found.freedom()[1], "one comparison between furnaces says nothing");
    EffectsReport report = report(design, 3.1, 5.0, 5.2, 4.1, 4.5, 6.0, 6.2);
    assertTrue(report.effects().stream().allMatch(e -> e.freedom() == 0 || e.freedom() >= 1), report.effects().toString());
  }
}
