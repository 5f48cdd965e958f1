package daubline.engine.stats;

/** The factor L of a symmetric positive definite matrix A = LLᵀ, kept small and plain because searches use it often. */
public final class Cholesky {

  private static final double LEAST = 1e-11;

  private final double[][] l;
  private final boolean definite;

  private Cholesky(double[][] l, boolean definite) {
    this.l = l;
    this.definite = definite;
  }

  /**
   * Factors a symmetric matrix; only its lower half is read.
   *
   * @param a the matrix by rows
   */
  public static Cholesky of(double[][] a) {
    int n = a.length;
    double[][] l = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = a[i][j];
        for (int k = 0; k < j; k++) {
          sum -= l[i][k] * l[j][k];
        }
        if (i != j) {
          l[i][j] = sum / l[j][j];
        } else if (sum > LEAST * Math.abs(a[i][i])) {
          l[i][i] = Math.sqrt(sum);
        } else {
          return new Cholesky(l, false);
        }
      }
    }
    return new Cholesky(l, true);
  }

  /** Whether the matrix is positive definite beyond rounding (a relative pivot above 1e−11). */
  public boolean isDefinite() {
    return definite;
  }

  /** The natural logarithm of the determinant; minus infinity when the matrix is not definite. */
  public double logDeterminant() {
    if (!definite) {
      return Double.NEGATIVE_INFINITY;
    }
    double sum = 0;
    for (int i = 0; i < l.length; i++) {
      sum += 2 * Math.log(l[i][i]);
    }
    return sum;
  }

  /** Solves A x = b. @throws IllegalStateException when the matrix is not definite */
  public double[] solve(double[] b) {
    double[] x = half(b);
    for (int i = l.length - 1; i >= 0; i--) {
      for (int k = i + 1; k < l.length; k++) {
        x[i] -= l[k][i] * x[k];
      }
      x[i] /= l[i][i];
    }
    return x;
  }

  /** Solves L x = b, so that |x|² = bᵀA⁻¹b. @throws IllegalStateException when the matrix is not definite */
  public double[] half(double[] b) {
    if (!definite) {
      throw new IllegalStateException("the matrix is not positive definite");
    }
    double[] x = b.clone();
    for (int i = 0; i < l.length; i++) {
      for (int k = 0; k < i; k++) {
        x[i] -= l[i][k] * x[k];
      }
      x[i] /= l[i][i];
    }
    return x;
  }

  /** L x, which turns independent deviates into deviates with covariance A. */
  public double[] times(double[] x) {
    double[] y = new double[l.length];
    for (int i = 0; i < l.length; i++) {
      for (int k = 0; k <= i; k++) {
        y[i] += l[i][k] * x[k];
      }
    }
    return y;
  }

  /** The inverse of A. @throws IllegalStateException when the matrix is not definite */
  public double[][] inverse() {
    double[][] inverse = new double[l.length][];
    for (int j = 0; j < l.length; j++) {
      double[] unit = new double[l.length];
      unit[j] = 1;
      inverse[j] = solve(unit);
    }
    return inverse;
  }
}
