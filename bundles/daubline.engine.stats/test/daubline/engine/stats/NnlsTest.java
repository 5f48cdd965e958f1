package daubline.engine.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Values computed with R 4.2.2, package nnls, unless another source stands beside the check. */
class NnlsTest {

  private static final double[][] SMALL = {{1, 2, 1}, {2, 1, 0}, {3, 0, 1}, {4, 1, 2}};

  @Test
  void activeBounds() {
    Nnls.Fit fit = Nnls.solve(SMALL, new double[] {1, 2, 4, 3});
    assertArrayEquals(new double[] {.9666666667, 0, 0}, fit.x(), 1e-9);
    assertEquals(1.966666667, fit.residual2(), 1e-9);
  }

  @Test
  void everythingAtZeroWhenEverySlopeIsDown() {
    Nnls.Fit fit = Nnls.solve(SMALL, new double[] {1, -2, 4, -3});
    assertArrayEquals(new double[] {0, 0, 0}, fit.x(), 0);
    assertEquals(30, fit.residual2(), 1e-12);
  }

  /** d13C and d15N of seven prey, corrected for fractionation, and shares that sum to one. */
  private static final double[][] PREY = {{-14.23, -18.50, -15.28, -16.90, -24.60, -18.69, -21.28}, {14.68, 9.74, 11.20, 11.96, 10.07, 14.00, 14.92},
      {1, 1, 1, 1, 1, 1, 1}};
  private static final double[] MINK = {-15.1, 13.2, 1};

  /** Least norm under equations and no negative share, as one NNLS of its dual (Lawson & Hanson 1974, chapter 23, algorithm LDP). */
  private static double[] leastNorm() {
    double[][] dual = new double[8][13];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 7; j++) {
        dual[j][i] = PREY[i][j];
        dual[j][3 + i] = -PREY[i][j];
        dual[j][6 + j] = 1;
      }
      dual[7][i] = MINK[i];
      dual[7][3 + i] = -MINK[i];
    }
    double[] wanted = {0, 0, 0, 0, 0, 0, 0, 1};
    double[] u = Nnls.solve(dual, wanted).x();
    double[] rest = new double[8];
    for (int j = 0; j < 8; j++) {
      rest[j] = -wanted[j];
      for (int c = 0; c < 13; c++) {
        rest[j] += dual[j][c] * u[c];
      }
    }
    return Arrays.stream(rest, 0, 7).map(r -> -r / rest[7]).toArray();
  }

  /** The share of one prey pushed down or up under the equations of the diet, weighted ten thousandfold (chapter 22). */
  private static double pushed(int prey, double towards) {
    double[][] a = new double[4][7];
    double[] b = new double[4];
    for (int i = 0; i < 3; i++) {
      a[i] = Arrays.stream(PREY[i]).map(v -> 10_000 * v).toArray();
      b[i] = 10_000 * MINK[i];
    }
    a[3][prey] = 1;
    b[3] = towards;
    return Nnls.solve(a, b).x()[prey];
  }

  /**
   * Diet of mink, an under-determined mixture: Ben-David, Hanley, Klein & Schell 1997, Canadian Journal of Zoology 75, 803–811,
   * as shipped with the R package limSolve; ranges by its linear programming, least norm by SciPy's SLSQP. The shares that its
   * lsei gives (.5137, 0, .3046, .1453, 0, .0364, 0) are a diet too, of the larger norm .379129.
   */
  @Test
  void publishedDiet() {
    assertArrayEquals(new double[] {.514903151, 0, .298325989, .154324202, 0, .0324466572, 0}, leastNorm(), 1e-7);
    assertTrue(Arrays.stream(leastNorm()).map(x -> x * x).sum() < .379129);
    double[] lowest = {.4946375989, 0, .2090234270, 0, 0, 0, 0};
    double[] highest = {.6386287038, .1523478692, .4293875575, .2289763192, .0471595764, .0995218413, .0594529170};
    for (int i = 0; i < 7; i++) {
      assertEquals(lowest[i], pushed(i, 0), 1e-6, "lowest of prey " + i);
      assertEquals(highest[i], pushed(i, 1), 1e-6, "highest of prey " + i);
    }
  }

  /** The conditions of Karush, Kuhn and Tucker hold on seeded random problems, which makes each a true minimum. */
  @Test
  void optimalityOnRandomProblems() {
    SplittableRandom random = new SplittableRandom(4);
    for (int trial = 0; trial < 10_000; trial++) {
      int rows = 2 + random.nextInt(9);
      int columns = 1 + random.nextInt(5);
      double[][] a = new double[rows][columns];
      double[] b = new double[rows];
      for (int i = 0; i < rows; i++) {
        b[i] = random.nextDouble() * 2 - .7;
        for (int j = 0; j < columns; j++) {
          a[i][j] = random.nextDouble() * 2 - .5;
        }
      }
      Nnls.Fit fit = Nnls.solve(a, b);
      for (int j = 0; j < columns; j++) {
        double slope = 0;
        for (int i = 0; i < rows; i++) {
          double r = b[i];
          for (int c = 0; c < columns; c++) {
            r -= a[i][c] * fit.x()[c];
          }
          slope += a[i][j] * r;
        }
        assertTrue(fit.x()[j] >= 0);
        assertTrue(fit.x()[j] > 0 ? Math.abs(slope) < 1e-8 : slope < 1e-8, "problem " + trial + " column " + j);
      }
    }
  }

  @Test
  void equalColumnsShareNothingAndBlowUpNothing() {
    Nnls.Fit fit = Nnls.solve(new double[][] {{1, 1}, {2, 2}, {3, 3}}, new double[] {2, 4, 6});
    assertEquals(2, fit.x()[0] + fit.x()[1], 1e-12);
  }

  @Test
  void refusesWhatIsNotANumber() {
    assertThrows(IllegalArgumentException.class,
        () -> Nnls.solve(new double[][] {{Double.NaN}}, new double[] {1}));
    assertThrows(IllegalArgumentException.class, () -> Nnls.solve(new double[][] {{1}}, new double[] {1, 2}));
  }
}
