package daubline.engine.design.next;

import daubline.engine.stats.Cholesky;
import daubline.engine.stats.Matrices;
import daubline.engine.stats.RandomStream;

/**
 * A Gaussian process with the Matérn 5/2 kernel, a length for each factor, and independent noise (Rasmussen &amp;
 * Williams 2006, chapters 2, 4 and 5). The mean is known, or constant and estimated.
 */
public final class GaussianProcess {

  private static final int STARTS = 24;
  private static final int STEPS = 120;

  private final double[][] x;
  private final double[] y;
  private final double[] lengths;
  private final double variance;
  private final double noise;
  private final boolean ordinary;
  private final Cholesky factored;
  private final double mean;
  private final double ones;
  private final double[] weights;
  private final double[] inverseOnes;

  /**
   * A process with given parameters.
   *
   * @param x the settings by trial
   * @param y the outcomes
   * @param lengths how far the outcome resembles itself along each factor, greater than zero
   * @param variance the variance of the process
   * @param noise the variance of a repeat
   * @param ordinary whether the mean is estimated; otherwise it is zero
   */
  public GaussianProcess(double[][] x, double[] y, double[] lengths, double variance, double noise, boolean ordinary) {
    this.x = x;
    this.y = y;
    this.lengths = lengths.clone();
    this.variance = variance;
    this.noise = noise;
    this.ordinary = ordinary;
    int n = y.length;
    double[][] k = new double[n][n];
    double[] one = new double[n];
    for (int i = 0; i < n; i++) {
      one[i] = 1;
      for (int j = 0; j < n; j++) {
        k[i][j] = variance * correlation(x[i], x[j]) + (i == j ? noise : 0);
      }
    }
    factored = Cholesky.of(k);
    if (!factored.isDefinite()) {
      throw new IllegalArgumentException("two trials at one setting need a noise above zero");
    }
    inverseOnes = factored.solve(one);
    ones = Matrices.dot(one, inverseOnes);
    mean = ordinary ? Matrices.dot(inverseOnes, y) / ones : 0;
    weights = factored.solve(java.util.Arrays.stream(y).map(v -> v - mean).toArray());
  }

  /** Matérn 5/2, a product over the factors. */
  private double correlation(double[] a, double[] b) {
    double product = 1;
    for (int j = 0; j < lengths.length; j++) {
      double h = Math.sqrt(5) * Math.abs(a[j] - b[j]) / lengths[j];
      product *= (1 + h + h * h / 3) * Math.exp(-h);
    }
    return product;
  }

  /**
   * A prediction.
   *
   * @param mean the expected outcome, without noise
   * @param variance its variance
   */
  public record Prediction(double mean, double variance) {

    /** The expected gain over the best so far when larger is better; zero when nothing is uncertain and nothing gained. */
    public double improvement(double best) {
      double s = Math.sqrt(variance);
      if (!(s > 0)) {
        return Math.max(0, mean - best);
      }
      double z = (mean - best) / s;
      var normal = new org.hipparchus.distribution.continuous.NormalDistribution();
      return (mean - best) * normal.cumulativeProbability(z) + s * normal.density(z);
    }
  }

  /** Predicts at a setting. */
  public Prediction at(double[] setting) {
    double[] k = new double[y.length];
    for (int i = 0; i < k.length; i++) {
      k[i] = variance * correlation(x[i], setting);
    }
    double[] kInverse = factored.solve(k);
    double left = 1 - Matrices.dot(k, inverseOnes);
    double rest = variance - Matrices.dot(k, kInverse) + (ordinary ? left * left / ones : 0);
    return new Prediction(mean + Matrices.dot(k, weights), Math.max(0, rest));
  }

  /** The log likelihood of the outcomes. */
  public double logLikelihood() {
    double[] centred = java.util.Arrays.stream(y).map(v -> v - mean).toArray();
    return -0.5 * (y.length * Math.log(2 * Math.PI) + factored.logDeterminant() + Matrices.dot(centred, weights));
  }

  /** The mean. */
  public double mean() {
    return mean;
  }

  /** The lengths along the factors. */
  public double[] lengths() {
    return lengths.clone();
  }

  /** The variance of a repeat. */
  public double noise() {
    return noise;
  }

  /**
   * The process most likely to give these outcomes, with a weak preference for lengths about half the range so that few
   * trials do not drive them to nothing or to infinity.
   *
   * @param x settings about −1 to 1
   */
  public static GaussianProcess fit(double[][] x, double[] y, long seed) {
    int d = x[0].length;
    double centre = java.util.Arrays.stream(y).average().orElse(0);
    double spread = Math.max(1e-300, java.util.Arrays.stream(y).map(v -> (v - centre) * (v - centre)).sum() / Math.max(1, y.length - 1));
    RandomStream random = new RandomStream(RandomStream.key(seed, "gaussian process"));
    double[] best = null;
    double most = Double.NEGATIVE_INFINITY;
    for (int s = 0; s < STARTS; s++) {
      double[] at = new double[d + 2];
      for (int j = 0; j < d; j++) {
        at[j] = s == 0 ? 0 : random.normal();
      }
      at[d] = s == 0 ? 0 : 0.5 * random.normal();
      at[d + 1] = s == 0 ? Math.log(0.1) : Math.log(0.1) + random.normal();
      double value = climb(x, y, spread, at);
      if (value > most) {
        most = value;
        best = at;
      }
    }
    return make(x, y, spread, best);
  }

  private static GaussianProcess make(double[][] x, double[] y, double spread, double[] at) {
    int d = at.length - 2;
    double[] lengths = java.util.Arrays.stream(at, 0, d).map(Math::exp).toArray();
    return new GaussianProcess(x, y, lengths, spread * Math.exp(at[d]), spread * Math.exp(at[d + 1]), true);
  }

  private static double posterior(double[][] x, double[] y, double spread, double[] at) {
    double prior = 0;
    for (int j = 0; j < at.length - 2; j++) {
      prior -= at[j] * at[j] / 2;
    }
    double ratio = at[at.length - 1] - Math.log(0.1);
    prior -= ratio * ratio / 8 + at[at.length - 2] * at[at.length - 2] / 8;
    if (at[at.length - 1] < -14) {
      return Double.NEGATIVE_INFINITY;
    }
    return make(x, y, spread, at).logLikelihood() + prior;
  }

  /** Steps along one parameter at a time, halving the step when none helps. */
  private static double climb(double[][] x, double[] y, double spread, double[] at) {
    double value = posterior(x, y, spread, at);
    double step = 0.8;
    for (int i = 0; i < STEPS && step > 1e-3; i++) {
      boolean better = false;
      for (int j = 0; j < at.length; j++) {
        for (int sign = -1; sign <= 1; sign += 2) {
          at[j] += sign * step;
          double tried = posterior(x, y, spread, at);
          if (tried > value) {
            value = tried;
            better = true;
          } else {
            at[j] -= sign * step;
          }
        }
      }
      step = better ? step : step / 2;
    }
    return value;
  }
}
