package daubline.engine.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Data of Tobin 1958, Econometrica 26, 24–36; estimates computed with R 4.2.2, survival::survreg. */
class CensoredNormalTest {

  private static final double[] BOUGHT = {0, 0.7, 0, 0, 0, 0, 0, 3.7, 0, 3, 10.4, 0, 0, 0, 1.5, 0, 0, 3.5, 6.1, 0};
  private static final double[] AGE = {57.7, 50.9, 48.5, 41.7, 47.7, 59.8, 44.3, 45.1, 51.7, 50, 46.8, 58, 58.9, 40, 34.1, 39.9, 33.4, 48.1, 46.6, 53.1};
  private static final double[] LIQUID = {236, 283, 207, 220, 238, 216, 284, 221, 275, 269, 207, 249, 246, 277, 231, 219, 240, 266, 214, 251};

  @Test
  void censoredRegression() {
    double[][] columns = new double[20][];
    boolean[] below = new boolean[20];
    for (int i = 0; i < 20; i++) {
      columns[i] = new double[] {AGE[i], LIQUID[i]};
      below[i] = BOUGHT[i] == 0;
    }
    CensoredNormal fit = CensoredNormal.fit(columns, BOUGHT, below);
    assertEquals(-28.9401331997, fit.logLikelihood(), 1e-9);
    assertArrayEquals(new double[] {15.1448663606815, -0.129059284097, -0.0455416629543}, fit.coefficients(), 2e-3);
    assertEquals(5.57253976309, fit.sigma(), 1e-3);
  }

  /** CRPS of a standard normal forecast, by formula in R. */
  @Test
  void rankedProbabilityScore() {
    assertEquals(0.233694977255, Crps.normal(0, 1, 0), 1e-11);
    assertEquals(0.826866340625, Crps.normal(0, 1, 1.3), 1e-11);
    assertEquals(2 * 0.826866340625, Crps.normal(5, 2, 5 + 2.6), 1e-11);
  }
}
