package daubline.engine.design.learn;

import org.hipparchus.distribution.continuous.FDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/** Tail probabilities of t and F, for degrees of freedom that need not be whole. */
public final class Tails {

  private Tails() {
  }

  /** The probability of a ratio at least f; NaN when the freedom is not above zero. */
  public static double f(double f, double numerator, double freedom) {
    if (!(freedom > 0) || !Double.isFinite(f) || Double.isInfinite(freedom)) {
      return Double.NaN;
    }
    return f <= 0 ? 1 : 1 - new FDistribution(numerator, freedom).cumulativeProbability(f);
  }

  /** The probability of a t at least this far from zero on either side; NaN when the freedom is not above zero. */
  public static double t(double t, double freedom) {
    return freedom > 0 && !Double.isNaN(t) ? 2 * new TDistribution(freedom).cumulativeProbability(-Math.abs(t)) : Double.NaN;
  }

  /** The t that a share of draws stays within on both sides; NaN when the freedom is not above zero. */
  public static double within(double share, double freedom) {
    return freedom > 0 ? new TDistribution(freedom).inverseCumulativeProbability((1 + share) / 2) : Double.NaN;
  }
}
