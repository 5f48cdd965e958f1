package daubline.engine.inference.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.inference.Pool;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Point agreements worked out by formula in R 4.2.2; the formulas are in the Javadoc of each kernel. */
class KernelTest {

  private static final double INF = Double.POSITIVE_INFINITY;
  private static final double[] SLAG = {64, 24, 6, 2.5, 1.5};
  private static final double[] TRIAL = {60, 26, 7, 3.2, 1.3};
  private static final double[] RELATIVE = {0.05, 0.06, 0.08, 0.15, 0.25};

  private static double g(Kernel kernel) {
    return Math.exp(kernel.log());
  }

  private static Kernel value(double e, double scale, double x, double sigma) {
    return new IntervalKernel(e, e, scale, x, sigma, 0);
  }

  private static Kernel atLeast(double limit, double scale, double x, double sigma) {
    return new IntervalKernel(limit, INF, scale, x, sigma, 0);
  }

  private static Kernel range(double low, double high, double scale, double x) {
    return new IntervalKernel(low, high, scale, x, 0, 0);
  }

  static Kernel composition() {
    double[] d = new double[5];
    for (int i = 0; i < 5; i++) {
      d[i] = Math.log(TRIAL[i] / SLAG[i]);
    }
    return new CompositionKernel(List.of("FeO", "SiO2", "Al2O3", "CaO", "MnO"), d, CompositionKernel.diagonal(RELATIVE), new double[5], new boolean[5]);
  }

  private static Kernel shares(double n) {
    return new SharesKernel(new double[] {0.55, 0.25, 0.15, 0.05}, new double[] {0.40, 0.35, 0.20, 0.05}, new double[4], n);
  }

  @Test
  void numbers() {
    assertEquals(0.457833361772, g(value(55, 4, 60, 0)), 1e-12);
    assertEquals(0.993790334674, g(atLeast(75, 6, 90, 0)), 1e-12);
    assertEquals(0.202328380964, g(atLeast(75, 6, 70, 0)), 1e-12);
    assertEquals(0.971171702141, g(range(28, 36, 2, 31)), 1e-12);
    assertEquals(0.0238346121021, g(range(28, 36, 2, 40)), 1e-12);
    assertEquals(1, g(range(28, 36, 2, 32)), 1e-12);
    assertEquals(g(atLeast(-75, 6, -70, 0)), g(new IntervalKernel(Double.NEGATIVE_INFINITY, 75, 6, 70, 0, 0)), 1e-12);
  }

  @Test
  void differenceInSigmasAndCompatibility() {
    Kernel kernel = value(55, 4, 60, 3);
    assertEquals(1, kernel.sigmas(), 1e-12);
    assertEquals(0.317310507863, kernel.compatibility(), 1e-10);
    assertEquals(0, atLeast(75, 6, 90, 1).sigmas());
    assertEquals(1, atLeast(75, 6, 90, 1).compatibility());
    assertEquals(-1, atLeast(75, 6, 69, 0).sigmas(), 1e-12);
  }

  @Test
  void words() {
    double[] pi = {0.7, 0.2, 0.1};
    assertEquals(0.285714285714, g(new WordKernel(pi, new double[] {0, 1, 0}, WordKernel.distinct(3))), 1e-12);
    assertEquals(0.7, g(new WordKernel(pi, new double[] {0.6, 0.3, 0.1}, WordKernel.distinct(3))), 1e-12);
    assertEquals(0.627998525413, g(new WordKernel(pi, new double[] {0, 1, 0}, WordKernel.ordered(3, 1))), 1e-12);
    assertEquals(0.3, new WordKernel(pi, new double[] {0, 1, 0}, WordKernel.distinct(3)).compatibility(), 1e-12);
  }

  @Test
  void compositions() {
    assertEquals(9.24236809133, CompositionKernel.squaredDistance(TRIAL, SLAG, RELATIVE), 1e-10);
    assertEquals(0.314964290078, g(composition()), 1e-11);
    assertEquals(0.0553188411975, composition().compatibility(), 1e-11);
  }

  @Test
  void sharesOfClasses() {
    assertEquals(0.727130405417, g(shares(20)), 1e-11);
    assertEquals(0.590892680495, shares(20).compatibility(), 1e-11);
    assertEquals(0.279543385988, g(shares(80)), 1e-11);
    assertEquals(0.0538851530231, shares(80).compatibility(), 1e-11);
    assertEquals(20, SharesKernel.effective(40, 40), 1e-12);
  }

  /** Closed forms of the expectation: Gaussian product, and Φ of a shifted limit. */
  @Test
  void expectationOverTheTrial() {
    assertEquals(0.48522452777, mean(value(55, 4, 60, 3)), 0.002);
    assertEquals(0.972605969893, mean(atLeast(75, 6, 90, 5)), 0.001);
  }

  private static double mean(Kernel kernel) {
    double[] logs = new double[400_000];
    kernel.logs(new Draws(logs.length, 17, 18), logs);
    return Arrays.stream(logs).map(Math::exp).average().orElseThrow();
  }

  /** A true reproduction scores 1/√2 on a number and (1 + 1/4)⁻² on five parts, not 1. */
  @Test
  void trueReproductionDoesNotScoreOne() {
    assertEquals(Math.sqrt(0.5), reproduced(value(55, 4, 60, 0)), 0.002);
    assertEquals(0.64, reproduced(composition()), 0.002);
    assertEquals(Math.pow(1 + 1 / 3.0, -1.5), reproduced(shares(20)), 0.002);
  }

  private static double reproduced(Kernel kernel) {
    double[] logs = new double[400_000];
    kernel.reproduce(new Draws(logs.length, 21, 22), logs);
    return Arrays.stream(logs).map(Math::exp).average().orElseThrow();
  }

  /** Contradictory claims are each tried; only when all disagree is the trial not consistent. */
  @Test
  void alternativesKeepTheSpread() {
    Kernel mixed = AlternativesKernel.of(List.of(List.of(value(55, 4, 55, 0)), List.of(value(95, 4, 55, 0))));
    assertEquals(0.5, g(mixed), 1e-9);
    assertEquals(1, mixed.compatibility(), 1e-12);
    double[] logs = new double[10_000];
    mixed.logs(new Draws(logs.length, 1, 2), logs);
    assertEquals(0.5, Arrays.stream(logs).filter(l -> l == 0).count() / 10_000.0, 0.02);
    assertTrue(Arrays.stream(logs).anyMatch(l -> l < -40));
  }

  /** Seven criteria with weights 2 1 1 2 3 2 1, the last untested; worked out by hand in R. */
  @Test
  void goldenPool() {
    double[] logs = {atLeast(75, 6, 90, 0).log(), range(28, 36, 2, 31).log(), value(55, 4, 60, 0).log(), 0, composition().log(),
        shares(20).log(), Double.NaN};
    double[] weights = {2, 1, 1, 2, 3, 2, 1};
    boolean[] recoverable = {true, true, true, true, true, true, true};
    assertEquals(63.9012321415, Pool.score(logs, weights), 1e-9);
    assertEquals(0.916666667, Pool.coverage(logs, weights, recoverable), 1e-9);
    assertEquals(37.3006840451, Pool.bound(logs, weights, recoverable, Pool.FLOOR), 1e-9);
    assertEquals(66.3310384178, Pool.bound(logs, weights, recoverable, 1), 1e-9);
  }
}
