package daubline.engine.stats;

import java.util.Arrays;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * Squared distance dᵀPd with P = Σ⁻¹ − Σ⁻¹11ᵀΣ⁻¹ / (1ᵀΣ⁻¹1), which equals (Vᵀd)ᵀ(VᵀΣV)⁻¹(Vᵀd) for every isometric
 * log-ratio basis V, so no basis needs to be chosen.
 */
public final class LogRatioMetric {

  private final double[] weights;
  private final double[][] projected;
  private final double[][] root;

  /** A metric from a positive definite covariance of logarithms. */
  public LogRatioMetric(double[][] covariance) {
    weights = weights(covariance);
    if (weights.length > 0) {
      projected = new double[0][];
      root = new double[0][];
      return;
    }
    CholeskyDecomposition cholesky = new CholeskyDecomposition(MatrixUtils.createRealMatrix(covariance), 1e-9, 1e-300);
    RealMatrix inverse = cholesky.getSolver().getInverse();
    root = cholesky.getL().getData();
    double[] ones = new double[covariance.length];
    Arrays.fill(ones, 1);
    double[] sums = inverse.operate(ones);
    double total = 0;
    for (double sum : sums) {
      total += sum;
    }
    projected = inverse.getData();
    for (int i = 0; i < sums.length; i++) {
      for (int j = 0; j < sums.length; j++) {
        projected[i][j] -= sums[i] * sums[j] / total;
      }
    }
  }

  /** One over each variance when the logarithms are independent, otherwise nothing. */
  private static double[] weights(double[][] covariance) {
    double[] weights = new double[covariance.length];
    for (int i = 0; i < weights.length; i++) {
      for (int j = 0; j < weights.length; j++) {
        if (i != j && covariance[i][j] != 0 || i == j && !(covariance[i][i] > 1e-300)) {
          return new double[0];
        }
      }
      weights[i] = 1 / covariance[i][i];
    }
    return weights;
  }

  /** Whether the logarithms are independent, so that the squared distance is the weighted sum of squares about the mean. */
  public boolean isDiagonal() {
    return weights.length > 0;
  }

  /** Weight of one part where the logarithms are independent. */
  public double weight(int part) {
    return weights[part];
  }

  /** Sum of the weights. */
  public double weight() {
    double sum = 0;
    for (double weight : weights) {
      sum += weight;
    }
    return sum;
  }

  /** Weighted mean of the parts of a difference where the logarithms are independent. */
  public double mean(double[] d) {
    double sum = 0;
    for (int i = 0; i < d.length; i++) {
      sum += weights[i] * d[i];
    }
    return sum / weight();
  }

  /** Squared distance of a difference of logarithms; the same when a constant is added to all of them. */
  public double squared(double[] d) {
    double sum = 0;
    if (isDiagonal()) {
      double mean = mean(d);
      for (int i = 0; i < d.length; i++) {
        sum += weights[i] * (d[i] - mean) * (d[i] - mean);
      }
      return sum;
    }
    for (int i = 0; i < d.length; i++) {
      double[] row = projected[i];
      double cross = 0;
      for (int j = 0; j < i; j++) {
        cross += row[j] * d[j];
      }
      sum += d[i] * (row[i] * d[i] + 2 * cross);
    }
    return Math.max(0, sum);
  }

  /**
   * Squared distances of many differences whose logarithms are not independent.
   *
   * @param d differences by part (first index) and draw (second index)
   * @param into filled, one per draw
   */
  public void squared(double[][] d, double[] into) {
    Arrays.fill(into, 0);
    for (int i = 0; i < d.length; i++) {
      for (int j = 0; j <= i; j++) {
        addProduct(d[i], d[j], projected[i][j] * (i == j ? 1 : 2), into);
      }
    }
    for (int m = 0; m < into.length; m++) {
      into[m] = Math.max(0, into[m]);
    }
  }

  private static void addProduct(double[] a, double[] b, double factor, double[] into) {
    for (int m = 0; m < into.length; m++) {
      into[m] += factor * a[m] * b[m];
    }
  }

  /** Independent standard normal deviates with the covariance given to them. */
  public double[] correlate(double[] z) {
    double[] d = new double[z.length];
    for (int i = 0; i < z.length; i++) {
      if (isDiagonal()) {
        d[i] = z[i] / Math.sqrt(weights[i]);
        continue;
      }
      for (int j = 0; j <= i; j++) {
        d[i] += root[i][j] * z[j];
      }
    }
    return d;
  }
}
