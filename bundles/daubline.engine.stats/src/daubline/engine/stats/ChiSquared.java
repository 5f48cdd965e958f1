package daubline.engine.stats;

import org.hipparchus.special.Gamma;

/** The chi-squared distribution. */
public final class ChiSquared {

  private ChiSquared() {
  }

  /** Probability of a value of at least x with some degrees of freedom. */
  public static double upper(double x, int degrees) {
    return x <= 0 ? 1 : Gamma.regularizedGammaQ(degrees / 2.0, x / 2);
  }
}
