package daubline.engine.stats;

import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;

/**
 * Centre and variation of a set of compositions (Aitchison 1986, chapter 4).
 *
 * @param centre closed geometric mean
 * @param covariance covariance of the centred log-ratios, divisor n − 1
 */
public record LogRatioSummary(double[] centre, double[][] covariance) {

  /** Of two compositions or more, all parts positive. */
  public static LogRatioSummary of(double[][] rows) {
    int parts = rows[0].length;
    double[][] clr = new double[rows.length][];
    double[] mean = new double[parts];
    double[] logs = new double[parts];
    for (int r = 0; r < rows.length; r++) {
      clr[r] = Composition.clr(rows[r]);
      for (int i = 0; i < parts; i++) {
        mean[i] += clr[r][i] / rows.length;
        logs[i] += Math.log(rows[r][i]) / rows.length;
      }
    }
    double[][] covariance = new double[parts][parts];
    for (double[] row : clr) {
      for (int i = 0; i < parts; i++) {
        for (int j = 0; j < parts; j++) {
          covariance[i][j] += (row[i] - mean[i]) * (row[j] - mean[j]) / (rows.length - 1);
        }
      }
    }
    for (int i = 0; i < parts; i++) {
      logs[i] = Math.exp(logs[i]);
    }
    return new LogRatioSummary(Composition.closure(logs), covariance);
  }

  /** Total variance, the trace of the covariance. */
  public double totalVariance() {
    double sum = 0;
    for (int i = 0; i < covariance.length; i++) {
      sum += covariance[i][i];
    }
    return sum;
  }

  /** Variance of the logarithm of the ratio of two parts. */
  public double variation(int i, int j) {
    return covariance[i][i] + covariance[j][j] - 2 * covariance[i][j];
  }

  /** Share of the total variance along each principal component, largest first. */
  public double[] componentShares() {
    double[] values = new EigenDecompositionSymmetric(MatrixUtils.createRealMatrix(covariance)).getEigenvalues();
    double total = totalVariance();
    double[] shares = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      shares[i] = Math.max(0, values[i]) / total;
    }
    return shares;
  }
}
