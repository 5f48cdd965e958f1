package daubline.engine.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/**
 * Against R 4.2.2: lm(log(y) ~ t), lm(y ~ t) and confint of both, on data invented here:
 * t = 0, 0.5, 1, 2, 3.5, 5; y = 0.62, 0.55, 0.53, 0.41, 0.33, 0.21.
 */
class DecayFitTest {

  private static final double[] T = {0, 0.5, 1, 2, 3.5, 5};
  private static final double[] Y = {0.62, 0.55, 0.53, 0.41, 0.33, 0.21};

  @Test
  void theShareThatGoesAgreesWithR() {
    DecayFit fit = DecayFit.of(T, Y, true);
    assertEquals(0.6302669024647015, fit.start(), 1e-9);
    assertEquals(0.208499016547, fit.rate(), 1e-9);
    assertEquals(0.0131198602578, fit.error(), 1e-9);
    assertEquals(0.172072444754, fit.low(), 1e-9);
    assertEquals(0.244925588341, fit.high(), 1e-9);
  }

  @Test
  void theAmountThatGoesAgreesWithR() {
    DecayFit fit = DecayFit.of(T, Y, false);
    assertEquals(0.600585585586, fit.start(), 1e-9);
    assertEquals(0.0794594594595, fit.rate(), 1e-9);
    assertEquals(0.00476179606123, fit.error(), 1e-9);
    assertEquals(0.0662385940933, fit.low(), 1e-9);
    assertEquals(0.0926803248256, fit.high(), 1e-9);
    assertEquals(0.020481259287, fit.misses(), 1e-9);
  }

  @Test
  void twoObservationsHaveNoRangeAndOneIsRefused() {
    DecayFit two = DecayFit.of(new double[] {0, 2}, new double[] {0.6, 0.3}, true);
    assertEquals(Math.log(2) / 2, two.rate(), 1e-12);
    assertEquals(0.15, two.at(4), 1e-12);
    assertEquals(1 - Math.sqrt(0.5), two.goes(two.rate()), 1e-12);
    assertTrue(Double.isNaN(two.low()) && Double.isNaN(two.misses()));
    assertThrows(IllegalArgumentException.class, () -> DecayFit.of(new double[] {1, 1}, new double[] {0.6, 0.3}, false));
    assertThrows(IllegalArgumentException.class, () -> DecayFit.of(new double[] {0, 1}, new double[] {0.6, 0}, true));
  }
}
