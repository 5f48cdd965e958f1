package daubline.intake;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds the known word that a mistyped one was probably meant to be. */
public final class Nearest {

  private Nearest() {
  }

  /** The known word with the fewest letters to change; empty when even that one is far off. */
  public static Optional<String> to(String typed, Collection<String> known) {
    String wanted = Heading.key(typed);
    return known.stream().filter(k -> distance(wanted, Heading.key(k)) <= Math
        .max(1, Math.max(wanted.length(), k.length()) * 2 / 5))
        .min(Comparator.<String>comparingInt(k -> distance(wanted, Heading.key(k))).thenComparing(Comparator.naturalOrder()));
  }

  /** A sentence that names the nearest word, or several to choose from. */
  public static String remedy(String typed, Collection<String> known, String otherwise) {
    return to(typed, known).map(k -> "did you mean “" + k + "”? " + otherwise).orElse(otherwise);
  }

  /** Letters to insert, delete, replace or swap with their neighbour (optimal string alignment). */
  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : step(d, a, b, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int step(int[][] d, String a, String b, int i, int j) {
    int change = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
    int best = Math.min(change, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
    boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
  }
}
