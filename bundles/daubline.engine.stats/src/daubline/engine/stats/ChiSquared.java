package daubline.engine.stats;

import org.hipparchus.special.Gamma;

/** The chi-squared distribution. */
public final class ChiSquared {

  /** Beyond this, and far beyond the degrees of freedom, nothing is left above that a double could hold. */
  private static final double FAR = 1e5;

  private ChiSquared() {
  }

  /** Probability of a value of at least x with some degrees of freedom. */
  public static double upper(double x, int degrees) {
    if (x > FAR && x > FAR * degrees) {
      return 0;
    }
    return x <= 0 ? 1 : Gamma.regularizedGammaQ(degrees / 2.0, x / 2);
  }
}
