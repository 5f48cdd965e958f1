package daubline.engine.process.shaft;

import java.util.Arrays;

/**
 * A banded linear system solved by Gaussian elimination with row exchange inside the band.
 *
 * <p>Source: G. H. Golub, C. F. Van Loan, Matrix Computations, section on band systems (from memory).
 */
final class BandedSystem {

  private final int size;
  private final int below;
  private final int span;
  private final double[] a;
  private final int[] pivots;

  /**
   * An empty system.
   *
   * @param size unknowns
   * @param below diagonals below the main one
   * @param above diagonals above it, before row exchange
   */
  BandedSystem(int size, int below, int above) {
    this.size = size;
    this.below = below;
    this.span = 2 * below + above + 1;
    a = new double[size * span];
    pivots = new int[size];
  }

  void clear() {
    Arrays.fill(a, 0);
  }

  /** Sets an entry inside the band. */
  void set(int row, int column, double value) {
    a[row * span + column - row + below] = value;
  }

  /** Factors in place; false when the matrix is singular. */
  boolean factor() {
    for (int k = 0; k < size; k++) {
      int last = Math.min(size - 1, k + below);
      int pivot = k;
      double most = Math.abs(a[k * span + below]);
      for (int i = k + 1; i <= last; i++) {
        double v = Math.abs(a[i * span + k - i + below]);
        if (v > most) {
          most = v;
          pivot = i;
        }
      }
      pivots[k] = pivot;
      if (!(most > 1e-300)) {
        return false;
      }
      int width = Math.min(size - k, span - below);
      if (pivot != k) {
        swap(k, pivot, width);
      }
      eliminate(k, last, width);
    }
    return true;
  }

  private void swap(int k, int pivot, int width) {
    int p = k * span + below;
    int q = pivot * span + k - pivot + below;
    for (int j = 0; j < width; j++) {
      double t = a[p + j];
      a[p + j] = a[q + j];
      a[q + j] = t;
    }
  }

  private void eliminate(int k, int last, int width) {
    int p = k * span + below;
    double inverse = 1 / a[p];
    for (int i = k + 1; i <= last; i++) {
      int q = i * span + k - i + below;
      double factor = a[q] * inverse;
      a[q] = factor;
      if (factor != 0) {
        for (int j = 1; j < width; j++) {
          a[q + j] -= factor * a[p + j];
        }
      }
    }
  }

  /** Replaces a right-hand side by the solution; after {@link #factor}. */
  void solve(double[] b) {
    for (int k = 0; k < size; k++) {
      double t = b[pivots[k]];
      b[pivots[k]] = b[k];
      b[k] = t;
      int last = Math.min(size - 1, k + below);
      for (int i = k + 1; i <= last; i++) {
        b[i] -= a[i * span + k - i + below] * t;
      }
    }
    for (int k = size - 1; k >= 0; k--) {
      int p = k * span + below;
      int width = Math.min(size - k, span - below);
      double sum = b[k];
      for (int j = 1; j < width; j++) {
        sum -= a[p + j] * b[k + j];
      }
      b[k] = sum / a[p];
    }
  }
}
