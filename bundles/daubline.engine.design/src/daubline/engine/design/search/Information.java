package daubline.engine.design.search;

import daubline.engine.stats.Cholesky;
import daubline.engine.stats.Matrices;

/**
 * XᵀV⁻¹X and its inverse, kept up to date while single rows change. For a change δ of row i, with r = XᵀV⁻¹eᵢ and
 * v = (V⁻¹)ᵢᵢ, the matrix becomes M + δrᵀ + rδᵀ + vδδᵀ; its determinant grows by (1 + δᵀM⁻¹r)² + δᵀM⁻¹δ (v − rᵀM⁻¹r).
 * This holds for every V; for V = I it is the exchange formula of Fedorov 1972.
 */
final class Information {

  /** Added to the diagonal of a singular start so that it has a way out; gone at the next refresh. */
  private static final double RIDGE = 1e-6;

  final double[][] x;
  private final double[][] precision;
  private final double[][] moments;
  private final int p;
  double[][] inverse;
  private double[][] inverseMoments;
  private double trace;
  private int row = -1;
  private double[] r;
  private double[] w;
  private double c;
  private double[] momentsR;
  private double gamma;
  private double a;
  private double b;
  private double ratio;
  private double nextTrace;

  /**
   * @param x the model matrix, changed by {@link #apply}
   * @param precision V⁻¹
   * @param moments the moment matrix of the region, or null when only the determinant counts
   */
  Information(double[][] x, double[][] precision, double[][] moments) {
    this.x = x;
    this.precision = precision;
    this.moments = moments;
    p = x[0].length;
    refresh();
  }

  /** Computes everything anew. */
  void refresh() {
    double[][] m = Matrices.quadratic(x, precision);
    Cholesky factored = Cholesky.of(m);
    if (!factored.isDefinite()) {
      for (int i = 0; i < p; i++) {
        m[i][i] += RIDGE;
      }
      factored = Cholesky.of(m);
    }
    inverse = factored.inverse();
    row = -1;
    refreshMoments();
  }

  private void refreshMoments() {
    if (moments != null) {
      trace = Matrices.trace(inverse, moments);
      inverseMoments = Matrices.times(inverse, Matrices.times(moments, inverse));
    }
  }

  /** The exact criterion, smaller is better: minus the log determinant, or the average variance of prediction. */
  static double exact(double[][] x, double[][] precision, double[][] moments) {
    Cholesky m = Cholesky.of(Matrices.quadratic(x, precision));
    if (!m.isDefinite()) {
      return Double.POSITIVE_INFINITY;
    }
    return moments == null ? -m.logDeterminant() : Matrices.trace(m.inverse(), moments);
  }

  /** Makes ready to try changes of one row. */
  void select(int i) {
    if (row == i) {
      return;
    }
    row = i;
    r = new double[p];
    for (int k = 0; k < x.length; k++) {
      double v = precision[i][k];
      if (v != 0) {
        for (int j = 0; j < p; j++) {
          r[j] += v * x[k][j];
        }
      }
    }
    w = Matrices.times(inverse, r);
    c = Matrices.dot(r, w);
    if (moments != null) {
      momentsR = Matrices.times(inverseMoments, r);
      gamma = Matrices.dot(r, momentsR);
    }
  }

  /** How much better the selected row would do with some columns changed: greater than zero when it would. */
  double gain(int[] columns, double[] delta) {
    a = 0;
    b = 0;
    double alpha = 0;
    double beta = 0;
    for (int s = 0; s < columns.length; s++) {
      int j = columns[s];
      b += delta[s] * w[j];
      for (int t = 0; t < columns.length; t++) {
        a += delta[s] * delta[t] * inverse[j][columns[t]];
      }
      if (moments != null) {
        beta += delta[s] * momentsR[j];
        for (int t = 0; t < columns.length; t++) {
          alpha += delta[s] * delta[t] * inverseMoments[j][columns[t]];
        }
      }
    }
    double v = precision[row][row];
    ratio = (1 + b) * (1 + b) + a * (v - c);
    if (moments == null) {
      return ratio - 1;
    }
    nextTrace = trace + ((c - v) * alpha - 2 * (1 + b) * beta + a * gamma) / ratio;
    return ratio > 1e-9 ? 1 - nextTrace / trace : -1;
  }

  /** Takes the change of the selected row that was tried last. */
  void apply(int[] columns, double[] delta) {
    gain(columns, delta);
    double[] u = new double[p];
    for (int s = 0; s < columns.length; s++) {
      x[row][columns[s]] += delta[s];
      for (int j = 0; j < p; j++) {
        u[j] += inverse[j][columns[s]] * delta[s];
      }
    }
    double uu = (c - precision[row][row]) / ratio;
    double uw = -(1 + b) / ratio;
    double ww = a / ratio;
    for (int i = 0; i < p; i++) {
      for (int j = 0; j < p; j++) {
        inverse[i][j] += uu * u[i] * u[j] + uw * (u[i] * w[j] + w[i] * u[j]) + ww * w[i] * w[j];
      }
    }
    row = -1;
    refreshMoments();
  }
}
