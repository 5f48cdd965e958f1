package daubline.engine.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Values computed with the R package compositions 2.0-8 unless another source is named. */
class CompositionTest {

  private static final double[] A = {0.1, 0.2, 0.7};
  private static final double[] B = {0.3, 0.3, 0.4};

  @Test
  void centredLogRatios() {
    assertArrayEquals(new double[] {-0.879685776538, -0.186538595978, 1.06622437252}, Composition.clr(A), 1e-11);
    assertArrayEquals(new double[] {-0.0958940241506, -0.0958940241506, 0.191788048301}, Composition.clr(B), 1e-11);
  }

  @Test
  void isometricLogRatiosKeepTheDistance() {
    assertArrayEquals(new double[] {-1.07739064325, -0.885837190242}, Composition.ilr(A), 1e-10);
    assertArrayEquals(new double[] {-0.117445714276, -0.203421944256}, Composition.ilr(B), 1e-10);
    double[] a = Composition.ilr(A);
    double[] b = Composition.ilr(B);
    assertEquals(Composition.distance(A, B), Math.hypot(a[0] - b[0], a[1] - b[1]), 1e-12);
  }

  @Test
  void distanceAndPerturbation() {
    assertEquals(1.17778811109, Composition.distance(A, B), 1e-11);
    assertArrayEquals(new double[] {0.0810810810811, 0.162162162162, 0.756756756757}, Composition.perturb(A, B), 1e-11);
  }

  /** Two slags; a sub-composition is never further apart than the whole (Aitchison 1986). */
  @Test
  void slagPairAndDominanceOfTheWhole() {
    double[] x = {64, 24, 6, 2.5, 1.5, 2};
    double[] y = {58, 28, 7, 3.5, 1.0, 2.5};
    assertEquals(0.602112745152, Composition.distance(x, y), 1e-11);
    double[] xs = {64, 24, 6, 2.5, 1.5};
    double[] ys = {58, 28, 7, 3.5, 1.0};
    assertEquals(0.575206093447, Composition.distance(xs, ys), 1e-11);
  }

  /** Relative standard deviations (.02 .03 .04 .06 .10 .15) on both sides, computed in R through an ilr basis. */
  @Test
  void squaredDistanceNeedsNoBasis() {
    double[] x = {64, 24, 6, 2.5, 1.5, 2};
    double[] y = {58, 28, 7, 3.5, 1.0, 2.5};
    double[] sd = {0.02, 0.03, 0.04, 0.06, 0.10, 0.15};
    double[] difference = new double[6];
    double[] variance = new double[6];
    double[][] covariance = new double[6][6];
    for (int i = 0; i < 6; i++) {
      difference[i] = Math.log(x[i] / y[i]);
      variance[i] = 2 * sd[i] * sd[i];
      covariance[i][i] = variance[i];
    }
    assertEquals(57.0270652968, Composition.squaredDistance(difference, variance), 1e-8);
    assertEquals(57.0270652968, new LogRatioMetric(covariance).squared(difference), 1e-8);
  }

  /** Axioms over seeded cases: scale, order, perturbation and dominance. */
  @Test
  void axioms() {
    RandomStream random = new RandomStream(RandomStream.key(1, "composition axioms"));
    for (int i = 0; i < 10_000; i++) {
      int n = 3 + random.below(6);
      double[] x = new double[n];
      double[] y = new double[n];
      double[] p = new double[n];
      for (int k = 0; k < n; k++) {
        x[k] = Math.exp(2 * random.normal());
        y[k] = Math.exp(2 * random.normal());
        p[k] = Math.exp(random.normal());
      }
      double distance = Composition.distance(x, y);
      assertEquals(distance, Composition.distance(Composition.closure(x), y), 1e-9 * (1 + distance));
      assertEquals(distance, Composition.distance(Composition.perturb(x, p), Composition.perturb(y, p)), 1e-9 * (1 + distance));
      assertEquals(distance, Composition.distance(reversed(x), reversed(y)), 1e-9 * (1 + distance));
      double part = Composition.distance(java.util.Arrays.copyOf(x, n - 1), java.util.Arrays.copyOf(y, n - 1));
      assertTrue(part <= distance + 1e-9, "a part is further apart than the whole");
    }
  }

  private static double[] reversed(double[] x) {
    double[] r = new double[x.length];
    for (int i = 0; i < r.length; i++) {
      r[i] = x[x.length - 1 - i];
    }
    return r;
  }
}
