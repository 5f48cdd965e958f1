package daubline.engine.stats;

/**
 * Arithmetic of compositions, that is of positive parts of which only the ratios matter (Aitchison 1986, The statistical
 * analysis of compositional data; Egozcue and others 2003, Mathematical Geology 35, 279–300).
 */
public final class Composition {

  private Composition() {
  }

  /** The parts divided by their sum. */
  public static double[] closure(double[] parts) {
    double sum = 0;
    for (double part : parts) {
      sum += part;
    }
    double[] closed = parts.clone();
    for (int i = 0; i < closed.length; i++) {
      closed[i] /= sum;
    }
    return closed;
  }

  /** Centred log-ratios. */
  public static double[] clr(double[] parts) {
    double[] logs = new double[parts.length];
    double mean = 0;
    for (int i = 0; i < parts.length; i++) {
      logs[i] = Math.log(parts[i]);
      mean += logs[i] / parts.length;
    }
    for (int i = 0; i < parts.length; i++) {
      logs[i] -= mean;
    }
    return logs;
  }

  /** Isometric log-ratios: each part against the geometric mean of those after it. */
  public static double[] ilr(double[] parts) {
    int n = parts.length;
    double[] coordinates = new double[n - 1];
    double sumAfter = Math.log(parts[n - 1]);
    for (int i = n - 2; i >= 0; i--) {
      int after = n - 1 - i;
      double log = Math.log(parts[i]);
      coordinates[i] = Math.sqrt(after / (after + 1.0)) * (log - sumAfter / after);
      sumAfter += log;
    }
    return coordinates;
  }

  /** Aitchison distance. */
  public static double distance(double[] x, double[] y) {
    double[] a = clr(x);
    double[] b = clr(y);
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += (a[i] - b[i]) * (a[i] - b[i]);
    }
    return Math.sqrt(sum);
  }

  /** Perturbation: the closed product part by part. */
  public static double[] perturb(double[] x, double[] y) {
    double[] product = x.clone();
    for (int i = 0; i < x.length; i++) {
      product[i] *= y[i];
    }
    return closure(product);
  }

  /**
   * Squared distance of two compositions in units of the covariance of their logarithms, (VᵀΔ)ᵀ(VᵀΣV)⁻¹(VᵀΔ) for any
   * isometric basis V. For independent parts it is Σ d²/v − (Σ d/v)²/Σ 1/v.
   *
   * @param difference logarithm of x over y, part by part
   * @param variance variance of that logarithm, each greater than zero
   */
  public static double squaredDistance(double[] difference, double[] variance) {
    double squares = 0;
    double sums = 0;
    double weights = 0;
    for (int i = 0; i < difference.length; i++) {
      double weight = 1 / variance[i];
      squares += weight * difference[i] * difference[i];
      sums += weight * difference[i];
      weights += weight;
    }
    return Math.max(0, squares - sums * sums / weights);
  }
}
