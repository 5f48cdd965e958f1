package daubline.engine.design.judge;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.special.Gamma;

/** The chance that a two-sided t test sees an effect, by the noncentral t distribution. */
public final class Power {

  private static final NormalDistribution NORMAL = new NormalDistribution();
  private static final int INTERVALS = 100;

  private Power() {
  }

  /**
   * The chance of seeing an effect.
   *
   * @param ratio the effect in units of its standard error
   * @param freedom the degrees of freedom of the error; none gives no chance
   * @param alpha the rate of false alarms
   */
  public static double of(double ratio, double freedom, double alpha) {
    if (!(freedom > 0)) {
      return 0;
    }
    return of(ratio, freedom, new Threshold(new TDistribution(freedom).inverseCumulativeProbability(1 - alpha / 2)));
  }

  private record Threshold(double t) {
  }

  private static double of(double ratio, double freedom, Threshold threshold) {
    double t = threshold.t;
    // T = (Z + ratio)/S: averaged over S, the root of chi squared over its freedom, by Simpson's rule
    double from = Math.max(0, 1 - 9 / Math.sqrt(2 * freedom));
    double to = 1 + 9 / Math.sqrt(2 * freedom);
    double step = (to - from) / INTERVALS;
    double missed = 0;
    for (int i = 0; i <= INTERVALS; i++) {
      double s = from + i * step;
      double weight = i == 0 || i == INTERVALS ? 1 : i % 2 == 1 ? 4 : 2;
      missed += weight * density(s, freedom)
          * (NORMAL.cumulativeProbability(t * s - ratio) - NORMAL.cumulativeProbability(-t * s - ratio));
    }
    return Math.min(1, Math.max(0, 1 - missed * step / 3));
  }

  private static double density(double s, double freedom) {
    if (s <= 0) {
      return freedom == 1 ? Math.sqrt(2 / Math.PI) : 0;
    }
    double log = Math.log(2) + freedom / 2 * Math.log(freedom / 2) - Gamma.logGamma(freedom / 2)
        + (freedom - 1) * Math.log(s) - freedom * s * s / 2;
    return Math.exp(log);
  }

  /** The smallest effect, in units of its standard error, seen with this chance; infinite without freedom. */
  public static double smallest(double power, double freedom, double alpha) {
    if (!(freedom > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    Threshold threshold = new Threshold(new TDistribution(freedom).inverseCumulativeProbability(1 - alpha / 2));
    double low = 0;
    double high = 4;
    while (of(high, freedom, threshold) < power) {
      high *= 2;
    }
    double atLow = of(low, freedom, threshold) - power;
    double atHigh = of(high, freedom, threshold) - power;
    // false position, with the Illinois halving of the end that stays
    for (int i = 0; i < 60 && Math.abs(high - low) > 1e-7 && Math.abs(atHigh) > 1e-10; i++) {
      double next = high - atHigh * (high - low) / (atHigh - atLow);
      double at = of(next, freedom, threshold) - power;
      if (at * atHigh < 0) {
        low = high;
        atLow = atHigh;
      } else {
        atLow /= 2;
      }
      high = next;
      atHigh = at;
    }
    return high;
  }
}
