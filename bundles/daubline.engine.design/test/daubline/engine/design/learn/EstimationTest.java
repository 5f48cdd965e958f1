package daubline.engine.design.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.design.Change;
import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Model;
import daubline.engine.design.Run;
import daubline.engine.design.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Published and recomputed worked analyses. */
class EstimationTest {

  /** Yates 1935, the oats experiment: by block, variety (victory, golden rain, marvellous) and four rates of nitrogen. */
  static final double[] OATS = {111, 130, 157, 174, 117, 114, 161, 141, 105, 140, 118, 156, 61, 91, 97, 100, 70, 108, 126,
    149, 96, 124, 121, 144, 68, 64, 112, 86, 60, 102, 89, 96, 89, 129, 132, 124, 74, 89, 81, 122, 64, 103, 132, 133, 70, 89,
    104, 117, 62, 90, 100, 116, 80, 82, 94, 126, 63, 70, 109, 99, 53, 74, 118, 113, 89, 82, 86, 104, 97, 99, 119, 121};

  /** Box, Hunter & Hunter 2005, chapter 9: heat (one line each) at a temperature, then the four coatings' resistance. */
  private static final double[][] CORROSION = {{0, 67, 73, 83, 89}, {1, 65, 91, 87, 86}, {2, 155, 127, 147, 212},
    {2, 108, 100, 90, 153}, {1, 140, 142, 121, 150}, {0, 33, 8, 46, 54}};

  static Design corrosion() {
    List<Factor> factors = List.of(Factor.category("t", "temperature", "360", "370", "380").changing(Change.EACH_FURNACE),
        Factor.category("c", "coating", "C1", "C2", "C3", "C4"));
    List<Run> runs = new ArrayList<>();
    for (int heat = 0; heat < 6; heat++) {
      for (int coat = 0; coat < 4; coat++) {
        runs.add(new Run(new double[] {CORROSION[heat][0], coat}, heat, runs.size(), true));
      }
    }
    return new Design("corrosion", factors, runs, List.of());
  }

  static double[] corrosionOutcome() {
    return IntStream.range(0, 24).mapToDouble(i -> CORROSION[i / 4][1 + i % 4]).toArray();
  }

  private static double[][] rows(Model model, Term term) {
    int[] columns = model.columnsOf(term);
    double[][] rows = new double[columns.length][model.size()];
    for (int i = 0; i < columns.length; i++) {
      rows[i][columns[i]] = 1;
    }
    return rows;
  }

  @Test
  void corrosionSplitPlotReversesBothConclusions() {
    // Source: published analysis of variance (Box, Hunter & Hunter 2005); variances and criterion by R lme4.
    Design design = corrosion();
    Model model = Model.interactions(design.factors());
    double[] y = corrosionOutcome();
    SplitPlotAnova anova = SplitPlotAnova.of(design, model, y);
    assertEquals(2.7548, anova.lines().get(0).f(), 5e-5);
    assertEquals(.2093, anova.lines().get(0).p(), 5e-5);
    assertEquals(11.4798, anova.lines().get(1).f(), 5e-5);
    assertEquals(.001977, anova.lines().get(1).p(), 5e-7);
    assertEquals(4.3757, anova.lines().get(2).f(), 5e-5);
    assertEquals(.024066, anova.lines().get(2).p(), 5e-7);
    MixedModel mixed = MixedModel.fit(y, model.matrix(design.settings()), List.of(design.furnaces()), true);
    assertEquals(1172.167, mixed.variances()[0], 5e-4);
    assertEquals(124.542, mixed.variances()[1], 5e-4);
    assertEquals((anova.furnaceSquares() / 3 - anova.trialSquares() / 9) / 4, mixed.variances()[0], 1e-8 * 1172);
    KenwardRoger adjusted = mixed.adjusted();
    KenwardRoger.Test temperature = adjusted.test(rows(model, Term.of(0)));
    assertEquals(2.7548, temperature.f(), 5e-5);
    assertEquals(3, temperature.freedom(), 1e-6);
    KenwardRoger.Test coating = adjusted.test(rows(model, Term.of(1)));
    assertEquals(11.4798, coating.f(), 5e-5);
    assertEquals(9, coating.freedom(), 1e-6);
    // the wrong analysis, trials taken as independent: temperature p = .0026, coating p = .386
    Design alone = design.inFurnaces(IntStream.range(0, 24).toArray());
    SplitPlotAnova wrong = SplitPlotAnova.of(alone, model, y);
    assertEquals(.0026, wrong.lines().get(0).p(), 5e-5);
    assertEquals(.386, wrong.lines().get(1).p(), 5e-4);
  }

  @Test
  void oatsWithTwoStrata() {
    // Source: R lme4 and pbkrtest on Yates 1935; the variances as in Pinheiro & Bates 2000.
    List<Factor> factors = List.of(Factor.category("n", "nitrogen", "0", "0.2", "0.4", "0.6"),
        Factor.category("v", "variety", "victory", "golden rain", "marvellous"));
    Model model = Model.interactions(factors);
    List<double[]> settings = IntStream.range(0, 72).mapToObj(i -> new double[] {i % 4, i / 4 % 3}).toList();
    int[] block = IntStream.range(0, 72).map(i -> i / 12).toArray();
    int[] plot = IntStream.range(0, 72).map(i -> i / 4).toArray();
    MixedModel mixed = MixedModel.fit(OATS, model.matrix(settings), List.of(plot, block), true);
    assertEquals(106.062, mixed.variances()[0], 2e-3);
    assertEquals(214.481, mixed.variances()[1], 5e-3);
    assertEquals(177.083, mixed.variances()[2], 5e-4);
    KenwardRoger adjusted = mixed.adjusted();
    assertTest(37.68570, 45, adjusted.test(rows(model, Term.of(0))));
    KenwardRoger.Test variety = adjusted.test(rows(model, Term.of(1)));
    assertTest(1.48534, 10, variety);
    assertEquals(.27239, variety.p(), 1e-5);
    assertTest(.30282, 45, adjusted.test(rows(model, Term.of(0, 1))));
  }

  private static void assertTest(double f, double freedom, KenwardRoger.Test test) {
    assertEquals(f, test.f(), 1e-5 * Math.max(1, f));
    assertEquals(freedom, test.freedom(), 1e-4);
  }

  @Test
  void oatsAgainstTheRateOfNitrogen() {
    // Source: Pinheiro & Bates 2000: 81.872 + 73.667 nitro, standard deviations 14.5058, 11.0047, 12.8670, logLik −296.521.
    double[][] x = IntStream.range(0, 72).mapToObj(i -> new double[] {1, i % 4 * 0.2}).toArray(double[][]::new);
    int[] block = IntStream.range(0, 72).map(i -> i / 12).toArray();
    int[] plot = IntStream.range(0, 72).map(i -> i / 4).toArray();
    MixedModel mixed = MixedModel.fit(OATS, x, List.of(block, plot), true);
    assertEquals(81.872222, mixed.coefficients()[0], 1e-6);
    assertEquals(73.666667, mixed.coefficients()[1], 1e-6);
    // lme4 stops its search a little earlier; the criterion below is no worse
    assertEquals(14.5058, Math.sqrt(mixed.variances()[0]), 3e-4);
    assertEquals(11.0047, Math.sqrt(mixed.variances()[1]), 1e-4);
    assertEquals(12.8670, Math.sqrt(mixed.variances()[2]), 1e-4);
    assertEquals(-296.52088, -mixed.criterion() / 2, 1e-5);
  }

  @Test
  void lenthsCriticalValuesAreThoseOfSimulation() {
    // Source: own 4·10⁵ simulations in R; agree with Ye & Hamada 2000: 2.297/4.867 for 7 effects, 2.156/4.240 for 15.
    assertCritical(7, 2.297, 4.86);
    assertCritical(11, 2.211, 4.45);
    assertCritical(15, 2.156, 4.23);
    assertCritical(31, 2.065, 3.92);
  }

  private static void assertCritical(int m, double single, double any) {
    double[] critical = Lenth.critical(m, 0.05, 300_000, 4);
    assertEquals(single, critical[0], 0.02);
    assertEquals(any, critical[1], 0.05);
  }

  @Test
  void lenthOnTheEddyCurrentProbe() {
    // Source: NIST/SEMATECH e-Handbook 5.6.1, effects of the 2³ factorial; s0 .37125, pseudo standard error .345.
    Lenth lenth = Lenth.of(new double[] {3.1025, -.8675, .2125, .1275, .2475, .2975, .1425}, 0.05, 1);
    assertEquals(.37125, lenth.first(), 1e-12);
    assertEquals(.345, lenth.error(), 1e-12);
    assertTrue(3.1025 / lenth.error() > lenth.any() && .8675 / lenth.error() > lenth.single() && .2975 / lenth.error() < lenth.single());
  }

  @Test
  void permutationNamesItsFloor() {
    // Source: the 2³ spring example (BOXSPRIN, NIST Dataplot; Box & Bisgaard): 2 of 70 splits, p = .0285714.
    double[] y = {67, 79, 61, 75, 59, 90, 52, 87};
    double[] x = {-1, 1, -1, 1, -1, 1, -1, 1};
    Permutation test = Permutation.of(y, x, new int[8], 1000, 1);
    assertEquals(2 / 70.0, test.p(), 1e-12);
    assertEquals(2 / 70.0, test.floor(), 1e-12);
    assertEquals(70, test.ways());
  }

  @Test
  void permutationStaysInsideTheStrata() {
    double[] y = {5, 9, 3, 6, 4, 8};
    int[] furnaces = {0, 0, 1, 1, 2, 2};
    Permutation inside = Permutation.of(y, new double[] {-1, 1, -1, 1, -1, 1}, furnaces, 1000, 1);
    assertEquals(8, inside.ways());
    assertEquals(2 / 8.0, inside.p(), 1e-12);
    Permutation between = Permutation.of(y, new double[] {-1, -1, 1, 1, 1, 1}, furnaces, 1000, 1);
    assertEquals(3, between.ways());
    assertEquals(1 / 3.0, between.floor(), 1e-12);
  }
}
