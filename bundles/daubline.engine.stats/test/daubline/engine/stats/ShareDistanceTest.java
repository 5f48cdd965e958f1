package daubline.engine.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Textbook definitions, values computed in R; one value is that of the SciPy documentation of jensenshannon. */
class ShareDistanceTest {

  private static final double[] P = {0.5, 0.3, 0.2};
  private static final double[] Q = {0.2, 0.5, 0.3};

  @Test
  void distances() {
    assertEquals(0.223804657186, ShareDistance.kullbackLeibler(P, Q), 1e-11);
    assertEquals(0.0508746125396, ShareDistance.jensenShannon(P, Q), 1e-11);
    assertEquals(0.073396551218, ShareDistance.jensenShannon(P, Q) / Math.log(2), 1e-11);
    assertEquals(0.270917978765, Math.sqrt(ShareDistance.jensenShannon(P, Q) / Math.log(2)), 1e-11);
    assertEquals(0.226991024237, ShareDistance.hellinger(P, Q), 1e-11);
    assertEquals(0.948475074916, ShareDistance.overlap(P, Q), 1e-11);
    assertEquals(0.3, ShareDistance.totalVariation(P, Q), 1e-12);
  }

  /** SciPy documentation: jensenshannon([1, 0], [0.5, 0.5]) = 0.46450140402245893 (base e). */
  @Test
  void zeroSharesAreAllowed() {
    assertEquals(0.46450140402245893, Math.sqrt(ShareDistance.jensenShannon(new double[] {1, 0}, new double[] {0.5, 0.5})), 1e-14);
    assertEquals(1, ShareDistance.hellinger(new double[] {1, 0}, new double[] {0, 1}), 1e-12);
  }
}
