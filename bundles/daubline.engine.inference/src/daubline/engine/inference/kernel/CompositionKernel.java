package daubline.engine.inference.kernel;

import daubline.engine.stats.ChiSquared;
import daubline.engine.stats.Composition;
import daubline.engine.stats.Gaussian;
import daubline.engine.stats.LogRatioMetric;
import java.util.Arrays;
import java.util.List;

/**
 * A composition against a composition by log-ratios: exp(−m²/(2(D−1))), where m² is the squared distance in units of the
 * covariance of the logarithms. Dividing by D−1 makes nine oxides weigh as much as one number.
 */
public final class CompositionKernel implements Kernel {

  /** What stands for a value below a limit of detection, as share of the limit. */
  private static final double BELOW_LIMIT_SHARE = 0.65;

  private final List<String> parts;
  private final LogRatioMetric metric;
  private final double[][] total;
  private final double[] difference;
  private final double[] sigma;
  private final boolean[] below;
  private final double[] uncertain;

  /**
   * A kernel.
   *
   * @param parts name of each part; criteria that read the same part of the same slag draw it alike
   * @param difference logarithm of trial over evidence, part by part, at least two parts; below a limit of detection 0.65
   *     times the limit stands for the value
   * @param covariance covariance of the logarithms of evidence and tolerance
   * @param sigma standard uncertainty of the trial's logarithms
   * @param below parts of the trial that are below their limit of detection
   */
  public CompositionKernel(List<String> parts, double[] difference, double[][] covariance, double[] sigma, boolean[] below) {
    this.parts = List.copyOf(parts);
    this.difference = difference.clone();
    this.sigma = sigma.clone();
    this.below = below.clone();
    this.metric = new LogRatioMetric(covariance);
    this.uncertain = new double[sigma.length];
    this.total = new double[sigma.length][];
    for (int i = 0; i < sigma.length; i++) {
      total[i] = covariance[i].clone();
      uncertain[i] = below[i] ? 1 : sigma[i] * sigma[i];
      total[i][i] += uncertain[i];
    }
  }

  /** Squared distance in units of evidence and tolerance. */
  public double squaredDistance() {
    return metric.squared(difference);
  }

  private int degrees() {
    return difference.length - 1;
  }

  @Override
  public double log() {
    return -squaredDistance() / (2 * degrees());
  }

  @Override
  public double compatibility() {
    return ChiSquared.upper(new LogRatioMetric(total).squared(difference), degrees());
  }

  @Override
  public double sigmas() {
    double p = compatibility();
    return p >= 1 ? 0 : Gaussian.deviate(p);
  }

  private boolean isCertain() {
    for (double variance : uncertain) {
      if (variance != 0) {
        return false;
      }
    }
    return true;
  }

  @Override
  public void logs(Draws draws, double[] into) {
    if (isCertain()) {
      Arrays.fill(into, log());
      return;
    }
    if (metric.isDiagonal()) {
      independent(draws, into);
      return;
    }
    double[][] outcome = new double[parts.size()][into.length];
    for (int i = 0; i < outcome.length; i++) {
      draw(i, draws.named(parts.get(i)), outcome[i]);
    }
    metric.squared(outcome, into);
    double factor = -0.5 / degrees();
    for (int m = 0; m < into.length; m++) {
      into[m] *= factor;
    }
  }

  /** Parts independent of one another: Σwd² − (Σwd)²/Σw, centred first so that nothing cancels. */
  private void independent(Draws draws, double[] into) {
    double[] sums = new double[into.length];
    double[] limited = new double[into.length];
    double centre = metric.mean(difference);
    Arrays.fill(into, 0);
    for (int i = 0; i < difference.length; i++) {
      Draws own = draws.named(parts.get(i));
      if (below[i]) {
        draw(i, own, limited);
        add(into, sums, metric.weight(i), -centre, 1, limited);
      } else {
        add(into, sums, metric.weight(i), difference[i] - centre, sigma[i], own.normals(0));
      }
    }
    double factor = -0.5 / degrees();
    double inverse = 1 / metric.weight();
    for (int m = 0; m < into.length; m++) {
      into[m] = factor * Math.max(0, into[m] - sums[m] * sums[m] * inverse);
    }
  }

  private static void add(double[] squares, double[] sums, double weight, double start, double step, double[] z) {
    for (int m = 0; m < squares.length; m++) {
      double d = start + step * z[m];
      squares[m] += weight * d * d;
      sums[m] += weight * d;
    }
  }

  private void draw(int part, Draws draws, double[] outcome) {
    double centre = difference[part];
    if (below[part]) {
      double[] u = draws.uniforms(0);
      for (int m = 0; m < outcome.length; m++) {
        outcome[m] = centre + Math.log(u[m] / BELOW_LIMIT_SHARE);
      }
      return;
    }
    double[] z = draws.normals(0);
    double spread = sigma[part];
    for (int m = 0; m < outcome.length; m++) {
      outcome[m] = centre + spread * z[m];
    }
  }

  @Override
  public void reproduce(Draws draws, double[] into) {
    int n = parts.size();
    double[][] random = new double[n][];
    for (int i = 0; i < n; i++) {
      random[i] = draws.named(parts.get(i)).normals(0);
    }
    LogRatioMetric combined = new LogRatioMetric(total);
    double[] z = new double[n];
    for (int m = 0; m < into.length; m++) {
      for (int i = 0; i < n; i++) {
        z[i] = random[i][m];
      }
      into[m] = -metric.squared(combined.correlate(z)) / (2 * degrees());
    }
  }

  /** A diagonal covariance from relative standard uncertainties. */
  public static double[][] diagonal(double[] relative) {
    double[][] covariance = new double[relative.length][relative.length];
    for (int i = 0; i < relative.length; i++) {
      covariance[i][i] = relative[i] * relative[i];
    }
    return covariance;
  }

  /** The squared distance of two compositions whose logarithms have independent relative uncertainties. */
  public static double squaredDistance(double[] x, double[] e, double[] relative) {
    double[] difference = new double[x.length];
    double[] variance = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      difference[i] = Math.log(x[i] / e[i]);
      variance[i] = relative[i] * relative[i];
    }
    return Composition.squaredDistance(difference, variance);
  }
}
