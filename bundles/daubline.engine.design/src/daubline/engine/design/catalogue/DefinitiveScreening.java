package daubline.engine.design.catalogue;

import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import java.util.List;

/**
 * Definitive screening designs (Jones &amp; Nachtsheim 2011): a conference matrix C, its mirror −C and one centre trial,
 * so that main effects are free of squares and of interactions of two. The matrices are those of Paley 1933 over a field
 * of q elements (Xiao, Lin &amp; Bai 2012), order q + 1. An odd number of factors takes the next even order and leaves
 * columns out, which stays orthogonal.
 */
public final class DefinitiveScreening {

  private static final int[] FIELDS = {3, 5, 7, 9, 11, 13, 17, 19, 23};

  private DefinitiveScreening() {
  }

  /** The smallest order of a conference matrix here that is at least k. @param k 3 to 24 */
  public static int order(int k) {
    for (int q : FIELDS) {
      if (q + 1 >= k && k >= 3) {
        return q + 1;
      }
    }
    throw new IllegalArgumentException("definitive screening takes 3 to 24 factors here, not " + k);
  }

  /** A conference matrix: zeros on the diagonal, ±1 elsewhere, CᵀC = (m − 1) I. @param m one of 4, 6, 8, 10, … */
  public static int[][] conference(int m) {
    int q = m - 1;
    int[][] c = new int[m][m];
    for (int i = 0; i < q; i++) {
      c[0][i + 1] = 1;
      c[i + 1][0] = q % 4 == 1 ? 1 : -1;
      for (int j = 0; j < q; j++) {
        c[i + 1][j + 1] = character(i, j, q);
      }
    }
    return c;
  }

  /** 1 when i − j is a square of the field, −1 when not, 0 when i = j. */
  private static int character(int i, int j, int q) {
    if (i == j) {
      return 0;
    }
    int difference = subtract(i, j, q);
    for (int x = 1; x < q; x++) {
      if (multiply(x, x, q) == difference) {
        return 1;
      }
    }
    return -1;
  }

  // the field of nine elements: a + b·i with i² = −1, digits modulo 3, written a + 3b
  private static int subtract(int x, int y, int q) {
    if (q != 9) {
      return Math.floorMod(x - y, q);
    }
    return Math.floorMod(x % 3 - y % 3, 3) + 3 * Math.floorMod(x / 3 - y / 3, 3);
  }

  private static int multiply(int x, int y, int q) {
    if (q != 9) {
      return x * y % q;
    }
    int a = x % 3;
    int b = x / 3;
    int c = y % 3;
    int d = y / 3;
    return Math.floorMod(a * c - b * d, 3) + 3 * Math.floorMod(a * d + b * c, 3);
  }

  /** The signs by rows, −1, 0 or 1: 2m + 1 rows for the order m. */
  public static int[][] signs(int k) {
    int m = order(k);
    int[][] c = conference(m);
    int[][] signs = new int[2 * m + 1][k];
    for (int r = 0; r < m; r++) {
      for (int j = 0; j < k; j++) {
        signs[2 * r][j] = c[r][j];
        signs[2 * r + 1][j] = -c[r][j];
      }
    }
    return signs;
  }

  /** The design for measured factors. @throws IllegalArgumentException when a factor has categories */
  public static Design design(List<Factor> factors, int extraCentres) {
    for (Factor f : factors) {
      if (f.isCategory()) {
        throw new IllegalArgumentException("factor " + f.name() + " has categories, which have no middle; definitive "
            + "screening needs measured factors");
      }
    }
    int[][] signs = signs(factors.size());
    Design plain = TwoLevel.design("definitive screening of " + (signs.length + extraCentres) + " trials", factors, signs,
        0, List.of("Main effects are free of squares and of interactions; interactions are mixed with each other in part."));
    double[][] settings = java.util.stream.Stream.concat(plain.settings().stream(),
        java.util.stream.Stream.generate(() -> new double[factors.size()]).limit(extraCentres)).toArray(double[][]::new);
    return Design.independent(plain.name(), factors, settings, plain.notes().toArray(String[]::new));
  }
}
