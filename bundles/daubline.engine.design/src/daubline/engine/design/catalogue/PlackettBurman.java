package daubline.engine.design.catalogue;

import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import java.util.Arrays;
import java.util.List;

/**
 * Two-level screening designs of 12, 20, 24 or 32 trials (Plackett &amp; Burman 1946): the first row has + at 0 and at
 * the squares modulo n − 1, a prime; the others are its shifts, the last is all minus. For n = 12 it is the published
 * row ++-+++---+-.
 */
public final class PlackettBurman {

  private PlackettBurman() {
  }

  /** The signs by rows: n rows, n − 1 columns. @param n 12, 20, 24 or 32 */
  public static int[][] signs(int n) {
    if (n != 12 && n != 20 && n != 24 && n != 32) {
      throw new IllegalArgumentException("Plackett–Burman designs here have 12, 20, 24 or 32 trials, not " + n);
    }
    int q = n - 1;
    int[] first = new int[q];
    Arrays.fill(first, -1);
    for (int i = 0; i < q; i++) {
      first[i * i % q] = 1;
    }
    int[][] signs = new int[n][q];
    for (int r = 0; r < q; r++) {
      for (int c = 0; c < q; c++) {
        signs[r][c] = first[Math.floorMod(c - r, q)];
      }
    }
    Arrays.fill(signs[q], -1);
    return signs;
  }

  /** The design on the first columns for these factors. */
  public static Design design(List<Factor> factors, int n, int centres) {
    if (factors.size() > n - 1) {
      throw new IllegalArgumentException(n + " trials screen at most " + (n - 1) + " factors, not " + factors.size());
    }
    int[][] signs = Arrays.stream(signs(n)).map(r -> Arrays.copyOf(r, factors.size())).toArray(int[][]::new);
    return TwoLevel.design("Plackett–Burman screening of " + n + " trials", factors, signs, centres, List.of(
        "Every main effect is mixed in part with all interactions of two other factors"
        + (n == 12 ? ", each to a third" : "") + "; read it as a first sieve."));
  }
}
