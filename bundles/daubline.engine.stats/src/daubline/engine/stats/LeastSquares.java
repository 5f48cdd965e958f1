package daubline.engine.stats;

import java.util.ArrayList;
import java.util.List;

/**
 * Least squares by Householder reflections on columns scaled by powers of two. A column that depends on earlier ones is
 * left out and named. Source: Golub &amp; Van Loan, Matrix Computations, 5.2–5.3; accuracy is checked against the NIST
 * StRD linear regression sets.
 */
public final class LeastSquares {

  /** A column whose part outside the earlier columns is smaller than this share of it counts as dependent. */
  private static final double DEPENDENT = 1e-10;

  private final int n;
  private final int columns;
  private final double[][] q;
  private final double[] scale;
  private final List<Integer> kept = new ArrayList<>();
  private final List<double[]> reflectors = new ArrayList<>();

  private LeastSquares(double[][] x) {
    n = x.length;
    columns = n == 0 ? 0 : x[0].length;
    q = Matrices.transpose(x);
    scale = new double[columns];
    for (int j = 0; j < columns; j++) {
      double most = 0;
      for (double v : q[j]) {
        most = Math.max(most, Math.abs(v));
      }
      scale[j] = most == 0 ? 1 : Math.scalb(1.0, -Math.getExponent(most));
      for (int i = 0; i < n; i++) {
        q[j][i] *= scale[j];
      }
    }
    for (int j = 0; j < columns && kept.size() < n; j++) {
      factor(j);
    }
  }

  private void factor(int j) {
    double[] v = q[j];
    double whole = norm(v, 0);
    for (double[] h : reflectors) {
      reflect(h, v);
    }
    int k = kept.size();
    double rest = norm(v, k);
    if (!(rest > DEPENDENT * whole)) {
      return;
    }
    double[] h = new double[n];
    System.arraycopy(v, k, h, k, n - k);
    double alpha = v[k] > 0 ? -rest : rest;
    h[k] -= alpha;
    double length = norm(h, k);
    for (int i = k; i < n; i++) {
      h[i] /= length;
    }
    reflectors.add(h);
    kept.add(j);
    java.util.Arrays.fill(v, k, n, 0);
    v[k] = alpha;
  }

  private static void reflect(double[] h, double[] v) {
    double dot = 2 * Matrices.dot(h, v);
    for (int i = 0; i < v.length; i++) {
      v[i] -= dot * h[i];
    }
  }

  private static double norm(double[] v, int from) {
    double sum = 0;
    for (int i = from; i < v.length; i++) {
      sum += v[i] * v[i];
    }
    return Math.sqrt(sum);
  }

  /**
   * A fit.
   *
   * @param coefficients one for each column, NaN for one that depends on earlier ones
   * @param inverse (XᵀX)⁻¹ over all columns, NaN where dependent
   * @param residuals observed minus fitted
   * @param residualSquares the sum of squared residuals
   * @param freedom observations less independent columns
   * @param dependent the columns left out
   */
  public record Fit(double[] coefficients, double[][] inverse, double[] residuals, double residualSquares, int freedom,
      List<Integer> dependent) {

    /** The residual variance; NaN without freedom. */
    public double variance() {
      return freedom > 0 ? residualSquares / freedom : Double.NaN;
    }

    /** The standard error of a coefficient; NaN without freedom. */
    public double standardError(int column) {
      return Math.sqrt(variance() * inverse[column][column]);
    }
  }

  /**
   * Fits.
   *
   * @param x the columns by rows, all finite, at least one row
   * @param y as many observations as rows
   */
  public static Fit fit(double[][] x, double[] y) {
    if (x.length == 0 || x.length != y.length) {
      throw new IllegalArgumentException("needs as many rows as observations: " + x.length + " and " + y.length);
    }
    return new LeastSquares(x).solve(x, y);
  }

  /** The columns that do not depend on earlier ones. */
  public static int[] independent(double[][] x) {
    return x.length == 0 ? new int[0] : new LeastSquares(x).kept.stream().mapToInt(Integer::intValue).toArray();
  }

  /** The number of independent columns. */
  public static int rank(double[][] x) {
    return independent(x).length;
  }

  private Fit solve(double[][] x, double[] y) {
    double[] work = y.clone();
    for (double[] h : reflectors) {
      reflect(h, work);
    }
    int r = kept.size();
    double[] z = new double[r];
    for (int k = r - 1; k >= 0; k--) {
      z[k] = work[k];
      for (int m = k + 1; m < r; m++) {
        z[k] -= q[kept.get(m)][k] * z[m];
      }
      z[k] /= q[kept.get(k)][k];
    }
    double[] coefficients = new double[columns];
    java.util.Arrays.fill(coefficients, Double.NaN);
    for (int k = 0; k < r; k++) {
      coefficients[kept.get(k)] = z[k] * scale[kept.get(k)];
    }
    // the residuals come back from the rotated tail, which cancels less than observed minus fitted
    java.util.Arrays.fill(work, 0, r, 0);
    double squares = Matrices.dot(work, work);
    for (int k = r - 1; k >= 0; k--) {
      reflect(reflectors.get(k), work);
    }
    List<Integer> dependent = new ArrayList<>();
    for (int j = 0; j < columns; j++) {
      if (!kept.contains(j)) {
        dependent.add(j);
      }
    }
    return new Fit(coefficients, inverse(r), work, squares, n - r, List.copyOf(dependent));
  }

  private double[][] inverse(int r) {
    double[][] half = new double[r][r];
    for (int c = 0; c < r; c++) {
      for (int k = c; k >= 0; k--) {
        double sum = k == c ? 1 : 0;
        for (int m = k + 1; m <= c; m++) {
          sum -= q[kept.get(m)][k] * half[m][c];
        }
        half[k][c] = sum / q[kept.get(k)][k];
      }
    }
    double[][] inverse = new double[columns][columns];
    for (double[] row : inverse) {
      java.util.Arrays.fill(row, Double.NaN);
    }
    for (int i = 0; i < r; i++) {
      for (int j = 0; j < r; j++) {
        inverse[kept.get(i)][kept.get(j)] = Matrices.dot(half[i], half[j]) * scale[kept.get(i)] * scale[kept.get(j)];
      }
    }
    return inverse;
  }
}
