package daubline.base;

import java.util.Locale;

/** What remains of a label when mud has made its letters and digits alike. */
public final class LookAlike {

  private LookAlike() {
  }

  /** The same text for two labels that are easily taken for each other: O and 0, I, L and 1, S and 5, B and 8, Z and 2. */
  public static String of(String label) {
    return label.toUpperCase(Locale.ROOT).replaceAll("[\\s_.-]", "").replace('O', '0').replace('I', '1').replace('L', '1')
        .replace('S', '5').replace('B', '8').replace('Z', '2');
  }
}
