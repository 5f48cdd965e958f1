package daubline.engine.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;

class GaussianTest {

  /** Against the independent implementation of Hipparchus. */
  @Test
  void agreesWithAnotherLibrary() {
    NormalDistribution normal = new NormalDistribution();
    for (double z = -8; z <= 8; z += 0.01) {
      assertEquals(normal.cumulativeProbability(z), Gaussian.cdf(z), 2e-14);
      assertEquals(Erf.erfc(Math.abs(z) / Math.sqrt(2)), Gaussian.twoSided(z), 1e-13);
    }
  }

  /** R: pnorm(75, 82, 5, lower.tail = FALSE, log.p = TRUE) and pnorm(130, 82, 5, ...). */
  @Test
  void logarithmOfFarTails() {
    assertEquals(-0.0842044030302, Gaussian.logCdf((82 - 75) / 5.0), 1e-12);
    assertEquals(-49.2712726247, Gaussian.logCdf((82 - 130) / 5.0), 1e-9);
    assertTrue(Double.isFinite(Gaussian.logCdf(-1e6)));
  }

  @Test
  void betweenIsTheDifference() {
    for (double a = -6; a < 6; a += 0.37) {
      for (double width : new double[] {0.01, 0.5, 3}) {
        double expected = Gaussian.cdf(a + width) - Gaussian.cdf(a);
        assertEquals(expected, Math.exp(Gaussian.logBetween(a, a + width)), 1e-14 + 1e-9 * expected);
      }
    }
  }

  @Test
  void deviateInvertsTheProbability() {
    assertEquals(1.959963984540054, Gaussian.deviate(0.05), 1e-12);
    assertEquals(1.959963984540054, Gaussian.quantile(0.975), 1e-12);
  }

  @Test
  void tableKeepsNineDigits() {
    for (double z = -12; z <= 12; z += 0.00137) {
      assertEquals(Gaussian.logCdf(z), LogCdfTable.at(z), 1e-9);
    }
  }
}
