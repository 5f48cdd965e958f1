package daubline.engine.inference.kernel;

import daubline.engine.stats.Gaussian;
import daubline.engine.stats.LogCdfTable;
import java.util.Arrays;

/**
 * A number against a value, a range, a lower or an upper limit. Value: exp(−z²/2). Limit: probability that the true
 * value lies on the allowed side. Range: probability of lying inside, over its maximum at the midpoint.
 */
public final class IntervalKernel implements Kernel {

  /** Keeps differences finite when nothing at all is uncertain. */
  private static final double SMALLEST = 1e-150;

  private final Mixture mixture;
  private final double low;
  private final double high;
  private final double scale;
  private final double found;
  private final double sigma;
  private final double half;
  private final double top;

  /** A kernel of a number of its own; the arguments are those of the other constructor. */
  public IntervalKernel(double low, double high, double scale, double found, double sigma, double half) {
    this(Mixture.OWN, low, high, scale, found, sigma, half);
  }

  /**
   * A kernel; all in one unit.
   *
   * @param mixture where the deviates of the number come from
   * @param low lower bound of the evidence, negative infinity when open; equal to high for a value
   * @param high upper bound of the evidence, positive infinity when open
   * @param scale standard uncertainty of the evidence and the tolerance, combined
   * @param found the trial's value
   * @param sigma its standard uncertainty, 0 when none is stated
   * @param half half the width of the trial's range, 0 when it is not a range
   */
  public IntervalKernel(Mixture mixture, double low, double high, double scale, double found, double sigma, double half) {
    this.mixture = mixture;
    this.low = low;
    this.high = high;
    this.scale = Math.max(scale, SMALLEST);
    this.found = found;
    this.sigma = sigma;
    this.half = half;
    this.top = isRange() ? Gaussian.logBetween((low - high) / (2 * this.scale), (high - low) / (2 * this.scale)) : 0;
  }

  private boolean isRange() {
    return high - low > 1e-3 * scale && !Double.isInfinite(high - low);
  }

  /** Logarithm of the agreement of one outcome. */
  public double logAt(double x) {
    if (isRange()) {
      return inRange(x);
    }
    if (high == Double.POSITIVE_INFINITY) {
      return low == Double.NEGATIVE_INFINITY ? 0 : Gaussian.logCdf((x - low) / scale);
    }
    if (low == Double.NEGATIVE_INFINITY) {
      return Gaussian.logCdf((high - x) / scale);
    }
    double z = (x - (low + high) / 2) / scale;
    return -z * z / 2;
  }

  private double inRange(double x) {
    double log = Gaussian.logBetween((x - high) / scale, (x - low) / scale) - top;
    if (Double.isNaN(log)) {
      // so narrow a scale that only inside and outside are left
      return x >= low && x <= high ? 0 : Double.NEGATIVE_INFINITY;
    }
    return Math.min(0, log);
  }

  @Override
  public double log() {
    return logAt(found);
  }

  @Override
  public double sigmas() {
    double difference = found < low ? found - low : found > high ? found - high : 0;
    return difference == 0 ? 0 : difference / total();
  }

  private double total() {
    return Math.sqrt(scale * scale + sigma * sigma + half * half / 3);
  }

  @Override
  public double compatibility() {
    return Gaussian.twoSided(sigmas());
  }

  @Override
  public void logs(Draws draws, double[] into) {
    if (sigma == 0 && half == 0) {
      Arrays.fill(into, log());
      return;
    }
    drawFound(draws, into);
    evaluate(into);
  }

  private void drawFound(Draws draws, double[] into) {
    if (sigma > 0) {
      double[] z = mixture.normals(draws);
      for (int m = 0; m < into.length; m++) {
        into[m] = found + sigma * z[m];
      }
    } else {
      Arrays.fill(into, found);
    }
    if (half > 0) {
      double[] u = draws.uniforms(0);
      for (int m = 0; m < into.length; m++) {
        into[m] += half * (2 * u[m] - 1);
      }
    }
  }

  private void evaluate(double[] into) {
    double inverse = 1 / scale;
    if (isRange()) {
      for (int m = 0; m < into.length; m++) {
        into[m] = logAt(into[m]);
      }
    } else if (Double.isInfinite(high - low)) {
      double limit = high == Double.POSITIVE_INFINITY ? low : high;
      double sign = high == Double.POSITIVE_INFINITY ? inverse : -inverse;
      for (int m = 0; m < into.length; m++) {
        into[m] = LogCdfTable.at((into[m] - limit) * sign);
      }
    } else {
      double centre = (low + high) / 2;
      for (int m = 0; m < into.length; m++) {
        double z = (into[m] - centre) * inverse;
        into[m] = -0.5 * z * z;
      }
    }
  }

  /** The same as the general way in one pass, for a value or a limit and a trial with a standard uncertainty. */
  @Override
  public void addTo(Draws draws, double weight, double floor, double[] sums, double[] scratch) {
    boolean limit = Double.isInfinite(high - low);
    double from = limit ? high == Double.POSITIVE_INFINITY ? low : high : low;
    double start = (found - from) / scale;
    double step = sigma / scale;
    if (half > 0 || sigma == 0 || !limit && low != high || !Double.isFinite(start) || !Double.isFinite(step)) {
      Kernel.super.addTo(draws, weight, floor, sums, scratch);
    } else if (limit) {
      double sign = high == Double.POSITIVE_INFINITY ? 1 : -1;
      LogCdfTable.addTo(sums, weight, floor, sign * start, sign * step, mixture.normals(draws));
    } else {
      addSquares(sums, weight, floor, start, step, mixture.normals(draws));
    }
  }

  private static void addSquares(double[] sums, double weight, double floor, double start, double step, double[] z) {
    for (int m = 0; m < sums.length; m++) {
      double difference = start + step * z[m];
      sums[m] += weight * Math.max(-0.5 * difference * difference, floor);
    }
  }

  @Override
  public void reproduce(Draws draws, double[] into) {
    double[] z = mixture.normals(draws);
    double[] u = isRange() ? draws.uniforms(0) : null;
    double truth = Math.max(low, Math.min(high, found));
    double spread = total();
    for (int m = 0; m < into.length; m++) {
      double common = u == null ? truth : low + (high - low) * u[m];
      into[m] = common + spread * z[m];
    }
    evaluate(into);
  }
}
