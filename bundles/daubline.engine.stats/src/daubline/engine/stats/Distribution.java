package daubline.engine.stats;

import daubline.base.Printed;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Propagation of distributions by adaptive Monte Carlo (JCGM 101:2008, 7.9), and the check of the first-order result
 * against it (clause 8).
 *
 * @param mean mean of the drawn results
 * @param sigma their standard deviation
 * @param low lower end of the probabilistically symmetric coverage interval
 * @param high upper end of it
 * @param shortLow lower end of the shortest coverage interval
 * @param shortHigh upper end of it
 * @param draws how many values were drawn
 * @param tolerance numerical tolerance for two significant digits of sigma
 * @param settled whether the results settled to that tolerance within the draws allowed
 */
public record Distribution(double mean, double sigma, double low, double high, double shortLow, double shortHigh, int draws,
    double tolerance, boolean settled) {

  private static final int BLOCK = 10_000;
  /** The drawn result is to be five times as exact as what it judges (JCGM 101:2008, 8.2, from memory). */
  private static final double SAFETY = 5;

  /**
   * Draws blocks of 10 000 until mean, sigma and both ends are stable to a fifth of the tolerance.
   *
   * @param coverage probability of the interval, such as 0.95
   * @param most most values to draw
   */
  public static Distribution of(ToDoubleFunction<double[]> model, List<Uncertain> inputs, double coverage, long seed, int most) {
    int blocks = Math.max(2, most / BLOCK);
    double[] all = new double[blocks * BLOCK];
    double[][] figures = new double[4][blocks];
    for (int block = 0; block < blocks; block++) {
      double[] drawn = block(model, inputs, new RandomStream(RandomStream.key(seed, block)));
      System.arraycopy(drawn, 0, all, block * BLOCK, BLOCK);
      double[] ends = Quantiles.of(drawn, (1 - coverage) / 2, (1 + coverage) / 2);
      figures[0][block] = mean(drawn);
      figures[1][block] = sigma(drawn);
      figures[2][block] = ends[0];
      figures[3][block] = ends[1];
      double tolerance = tolerance(mean(Arrays.copyOf(figures[1], block + 1)));
      if (block >= 1 && isStable(figures, block + 1, tolerance / SAFETY)) {
        return summary(Arrays.copyOf(all, (block + 1) * BLOCK), coverage, tolerance, true);
      }
    }
    return summary(all, coverage, tolerance(sigma(all)), false);
  }

  /** Whether the first-order interval y ± k·u agrees with this one to the tolerance at both ends. */
  public boolean confirms(Propagation first, double coverage) {
    double k = Gaussian.quantile((1 + coverage) / 2);
    return Math.abs(first.value() - k * first.sigma() - low) <= tolerance && Math.abs(first.value() + k * first.sigma() - high) <= tolerance;
  }

  /** The notice to print beside a first-order result, or empty when it holds. */
  public String notice(Propagation first, double coverage) {
    return confirms(first, coverage) ? "" : "First-order uncertainty " + Printed.number(first.sigma(), 2)
        + " is not valid here: drawing the distributions gives " + Printed.number(sigma, 2)
        + " and other interval ends (JCGM 101:2008, clause 8); use the drawn interval";
  }

  /** Half a unit of the second significant digit of a standard uncertainty (JCGM 101:2008, 7.9.2). */
  static double tolerance(double sigma) {
    return tolerance(sigma, 2);
  }

  /** Half a unit of the last of so many significant digits of a standard uncertainty, 1 or 2 (JCGM 101:2008, 7.9.2). */
  public static double tolerance(double sigma, int digits) {
    return sigma > 0 ? 0.5 * Math.pow(10, Math.floor(Math.log10(sigma)) + 1 - digits) : 0;
  }

  private static double[] block(ToDoubleFunction<double[]> model, List<Uncertain> inputs, RandomStream stream) {
    double[] x = new double[inputs.size()];
    double[] y = new double[BLOCK];
    for (int m = 0; m < BLOCK; m++) {
      for (int i = 0; i < x.length; i++) {
        x[i] = inputs.get(i).draw().applyAsDouble(stream);
      }
      y[m] = model.applyAsDouble(x);
    }
    return y;
  }

  /** Twice the standard error over blocks of every figure is below the tolerance. */
  private static boolean isStable(double[][] figures, int blocks, double tolerance) {
    for (double[] all : figures) {
      double[] figure = Arrays.copyOf(all, blocks);
      if (2 * sigma(figure) / Math.sqrt(figure.length) > tolerance) {
        return false;
      }
    }
    return true;
  }

  private static Distribution summary(double[] all, double coverage, double tolerance, boolean settled) {
    double[] sorted = all.clone();
    Arrays.sort(sorted);
    int width = (int) Math.round(coverage * sorted.length);
    int start = 0;
    for (int i = 0; i + width < sorted.length; i++) {
      start = sorted[i + width] - sorted[i] < sorted[start + width] - sorted[start] ? i : start;
    }
    double[] ends = Quantiles.of(sorted, (1 - coverage) / 2, (1 + coverage) / 2);
    int end = Math.min(start + width, sorted.length - 1);
    return new Distribution(mean(all), sigma(all), ends[0], ends[1], sorted[start], sorted[end], all.length, tolerance, settled);
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double v : values) {
      sum += v;
    }
    return sum / values.length;
  }

  private static double sigma(double[] values) {
    double mean = mean(values);
    double sum = 0;
    for (double v : values) {
      sum += (v - mean) * (v - mean);
    }
    return Math.sqrt(sum / (values.length - 1));
  }
}
