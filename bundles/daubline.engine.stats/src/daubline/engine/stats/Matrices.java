package daubline.engine.stats;

/** Products of small dense matrices kept by rows. */
public final class Matrices {

  private Matrices() {
  }

  /** A B. */
  public static double[][] times(double[][] a, double[][] b) {
    int columns = b.length == 0 ? 0 : b[0].length;
    double[][] c = new double[a.length][columns];
    for (int i = 0; i < a.length; i++) {
      for (int k = 0; k < b.length; k++) {
        double v = a[i][k];
        if (v != 0) {
          for (int j = 0; j < columns; j++) {
            c[i][j] += v * b[k][j];
          }
        }
      }
    }
    return c;
  }

  /** A x. */
  public static double[] times(double[][] a, double[] x) {
    double[] y = new double[a.length];
    for (int i = 0; i < a.length; i++) {
      y[i] = dot(a[i], x);
    }
    return y;
  }

  /** Aᵀ; an empty matrix stays empty. */
  public static double[][] transpose(double[][] a) {
    double[][] t = new double[a.length == 0 ? 0 : a[0].length][a.length];
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j < t.length; j++) {
        t[j][i] = a[i][j];
      }
    }
    return t;
  }

  /** AᵀA. */
  public static double[][] square(double[][] a) {
    return times(transpose(a), a);
  }

  /** Aᵀ P A. */
  public static double[][] quadratic(double[][] a, double[][] p) {
    return times(transpose(a), times(p, a));
  }

  /** A + f B. */
  public static double[][] plus(double[][] a, double f, double[][] b) {
    double[][] c = new double[a.length][];
    for (int i = 0; i < a.length; i++) {
      c[i] = a[i].clone();
      for (int j = 0; j < c[i].length; j++) {
        c[i][j] += f * b[i][j];
      }
    }
    return c;
  }

  /** The inner product. */
  public static double dot(double[] x, double[] y) {
    double sum = 0;
    for (int i = 0; i < x.length; i++) {
      sum += x[i] * y[i];
    }
    return sum;
  }

  /** The sum of the products of entries at the same place, which is tr(AᵀB). */
  public static double trace(double[][] a, double[][] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += dot(a[i], b[i]);
    }
    return sum;
  }
}
