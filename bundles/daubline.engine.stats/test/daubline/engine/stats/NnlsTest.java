package daubline.engine.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

  /** The conditions of Karush, Kuhn and Tucker hold on seeded random problems, which makes each a true minimum. */
  @Test
  void optimalityOnRandomProblems() {
    SplittableRandom random = new SplittableRandom(4);
    for (int trial = 0; trial < 2000; trial++) {
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
