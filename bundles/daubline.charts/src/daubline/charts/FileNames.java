package daubline.charts;

import java.util.Locale;

/** Names of files that every system takes. */
final class FileNames {

  private static final int LONGEST = 80;

  private FileNames() {
  }

  /** The text as a name of letters, digits and hyphens; a text that loses something on the way gets its hash, so that two stay two. */
  static String of(String text) {
    String plain = text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    String cut = plain.length() > LONGEST ? plain.substring(0, LONGEST) : plain;
    return cut.equals(text) ? cut : cut + "-" + Integer.toHexString(text.hashCode());
  }
}
