package daubline.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.stats.Cholesky;
import daubline.engine.stats.Matrices;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class StrataTest {

  /** Jones & Goos 2012, equivalent-estimation split-plot design of 12 trials in 4 whole plots, w and two s, as in R daewr. */
  private static final double[][] EQUIVALENT = {{-1, 0, -1}, {-1, 1, 1}, {-1, -1, 0}, {1, 1, 1}, {1, 1, -1}, {1, -1, 0}, {-1, -1, -1},
    {-1, 0, 1}, {-1, 1, 0}, {0, -1, -1}, {0, -1, 1}, {0, 0.1524, 0}};

  @Test
  void equivalentEstimationDesignGivesTheSameEstimatesForEveryRatio() {
    int[] furnaces = IntStream.range(0, 12).map(i -> i / 3).toArray();
    int[] days = IntStream.range(0, 12).toArray();
    double[][] x = Model.quadratic(CatalogueTest.measured(3)).matrix(List.of(EQUIVALENT));
    double[][] projection = Matrices.times(x, Matrices.times(Cholesky.of(Matrices.square(x)).inverse(), Matrices.transpose(x)));
    double[][] z = new Strata(1, 0).covariance(furnaces, days);
    double[][] swapped = Matrices.plus(Matrices.times(projection, z), -1, Matrices.times(z, projection));
    for (double[] row : swapped) {
      for (double v : row) {
        assertEquals(0, v, 1e-4, "0.1524 is printed to four digits");
      }
    }
    double[][] m = Matrices.quadratic(x, new Strata(1, 0).precision(furnaces, days));
    assertEquals(97825.99028, Math.exp(Cholesky.of(m).logDeterminant()), 1e-4);
  }

  @Test
  void precisionOfTrialsThatAreAlikeIsTheKnownInverse() {
    // (I + η11')⁻¹ = I − η/(1 + mη) 11'
    double[][] p = new Strata(2, 0).precision(new int[] {0, 0, 0}, new int[] {0, 1, 2});
    assertEquals(1 - 2 / 7.0, p[0][0], 1e-14);
    assertEquals(-2 / 7.0, p[0][1], 1e-14);
    assertTrue(new Strata(0, 0.5).covariance(new int[] {0, 1}, new int[] {3, 3})[0][1] == 0.5);
    assertThrows(IllegalArgumentException.class, () -> new Strata(-1, 0));
  }
}
