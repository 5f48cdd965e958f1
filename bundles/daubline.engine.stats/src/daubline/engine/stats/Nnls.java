package daubline.engine.stats;

/**
 * Least squares with no negative coefficient: minimises |A x - b|² over x ≥ 0 by the active-set method.
 *
 * <p>Source: C. L. Lawson, R. J. Hanson, Solving Least Squares Problems, Prentice-Hall 1974, chapter 23, algorithm
 * NNLS. Every least-squares step factors the free columns anew by Householder reflections, which keeps the digits that
 * normal equations would lose; the problems here have few columns.
 */
public final class Nnls {

  private final double[][] a;
  private final double[] b;
  private final int rows;
  private final int columns;
  private final boolean[] free;
  private final double[] x;
  private final double[] trial;
  private final double[] rest;
  private final double[][] work;

  private Nnls(double[][] a, double[] b) {
    this.a = a;
    this.b = b;
    rows = b.length;
    columns = rows == 0 ? 0 : a[0].length;
    free = new boolean[columns];
    x = new double[columns];
    trial = new double[columns];
    rest = new double[rows];
    work = new double[columns + 1][rows];
  }

  /**
   * A solution.
   *
   * @param x the coefficients, none negative
   * @param residual2 the sum of squared residuals |A x - b|²
   * @param free which coefficients are not held at zero
   */
  public record Fit(double[] x, double residual2, boolean[] free) {
  }

  /**
   * Solves one problem.
   *
   * @param a the matrix by rows, at least one row and one column, all finite
   * @param b the right-hand side, as long as {@code a}
   * @throws IllegalArgumentException when the sizes differ or a number is not finite
   */
  public static Fit solve(double[][] a, double[] b) {
    check(a, b);
    return new Nnls(a, b).run();
  }

  private static void check(double[][] a, double[] b) {
    if (a.length != b.length || b.length == 0 || a[0].length == 0) {
      throw new IllegalArgumentException("needs as many rows as right-hand sides and at least one of each: "
          + a.length + " rows, " + b.length + " right-hand sides");
    }
    for (int i = 0; i < b.length; i++) {
      if (a[i].length != a[0].length || !Double.isFinite(b[i])) {
        throw new IllegalArgumentException("row " + (i + 1) + " has another length or a right-hand side not finite");
      }
      for (double v : a[i]) {
        if (!Double.isFinite(v)) {
          throw new IllegalArgumentException("row " + (i + 1) + " holds a value that is not finite");
        }
      }
    }
  }

  private Fit run() {
    boolean[] refused = new boolean[columns];
    updateRest();
    for (int step = 0; step < 10 * columns + 10; step++) {
      int enter = steepest(refused);
      if (enter < 0) {
        break;
      }
      free[enter] = true;
      solveFree();
      if (trial[enter] <= 0) {
        // rounding only: the gradient said up, the solution says down; leaving it out ends the circle
        free[enter] = false;
        refused[enter] = true;
        continue;
      }
      java.util.Arrays.fill(refused, false);
      stepInside();
      updateRest();
    }
    double sum = 0;
    for (double r : rest) {
      sum += r * r;
    }
    return new Fit(x, sum, free);
  }

  /** The column at zero along which the sum of squares falls fastest, or -1 at the optimum. */
  private int steepest(boolean[] refused) {
    int best = -1;
    double most = 0;
    for (int j = 0; j < columns; j++) {
      if (free[j] || refused[j]) {
        continue;
      }
      double slope = 0;
      double size = 0;
      for (int i = 0; i < rows; i++) {
        slope += a[i][j] * rest[i];
        size += Math.abs(a[i][j] * b[i]);
      }
      if (slope > 1e-14 * size && slope > most) {
        most = slope;
        best = j;
      }
    }
    return best;
  }

  /** Moves towards the unrestricted solution of the free columns, releasing those that would turn negative. */
  private void stepInside() {
    while (true) {
      double step = 1;
      for (int j = 0; j < columns; j++) {
        if (free[j] && trial[j] <= 0) {
          step = Math.min(step, x[j] / (x[j] - trial[j]));
        }
      }
      for (int j = 0; j < columns; j++) {
        x[j] = free[j] ? x[j] + step * (trial[j] - x[j]) : 0;
      }
      if (step >= 1) {
        return;
      }
      for (int j = 0; j < columns; j++) {
        if (free[j] && trial[j] <= 0 && x[j] <= 1e-15 * Math.abs(trial[j])) {
          free[j] = false;
          x[j] = 0;
        }
      }
      solveFree();
    }
  }

  private void updateRest() {
    for (int i = 0; i < rows; i++) {
      double r = b[i];
      for (int j = 0; j < columns; j++) {
        r -= a[i][j] * x[j];
      }
      rest[i] = r;
    }
  }

  /** Unrestricted least squares on the free columns into {@code trial}, by Householder reflections. */
  private void solveFree() {
    int k = 0;
    for (int j = 0; j < columns; j++) {
      if (free[j]) {
        for (int i = 0; i < rows; i++) {
          work[k][i] = a[i][j];
        }
        k++;
      }
    }
    System.arraycopy(b, 0, work[k], 0, rows);
    double[] diagonal = new double[k];
    for (int j = 0; j < k && j < rows; j++) {
      diagonal[j] = reflect(j, k);
    }
    backSubstitute(k, diagonal);
  }

  /** Reflects column j onto its first entry and carries the later columns along; gives the diagonal entry. */
  private double reflect(int j, int last) {
    double[] v = work[j];
    double norm = 0;
    for (int i = j; i < rows; i++) {
      norm += v[i] * v[i];
    }
    norm = Math.sqrt(norm);
    if (norm == 0) {
      return 0;
    }
    double alpha = v[j] > 0 ? -norm : norm;
    double scale = norm * norm - alpha * v[j];
    v[j] -= alpha;
    for (int c = j + 1; c <= last; c++) {
      double dot = 0;
      for (int i = j; i < rows; i++) {
        dot += v[i] * work[c][i];
      }
      double factor = dot / scale;
      for (int i = j; i < rows; i++) {
        work[c][i] -= factor * v[i];
      }
    }
    return alpha;
  }

  private void backSubstitute(int k, double[] diagonal) {
    double[] z = new double[k];
    double largest = 0;
    for (double d : diagonal) {
      largest = Math.max(largest, Math.abs(d));
    }
    for (int j = k - 1; j >= 0; j--) {
      double sum = work[k][Math.min(j, rows - 1)];
      for (int c = j + 1; c < k; c++) {
        sum -= work[c][Math.min(j, rows - 1)] * z[c];
      }
      // a column that depends on the earlier ones gets nothing rather than a huge number
      z[j] = j < rows && Math.abs(diagonal[j]) > 1e-13 * largest ? sum / diagonal[j] : 0;
    }
    int next = 0;
    for (int j = 0; j < columns; j++) {
      trial[j] = free[j] ? z[next++] : 0;
    }
  }
}
