package daubline.export.format;

/**
 * Keeps text from becoming a formula in a spreadsheet. Programs take a field that begins with one of six characters for
 * a formula or a command; the customary remedy is an apostrophe before it. Only text is guarded: a negative number is a
 * number.
 */
public final class Guard {

  private static final String TRIGGERS = "=+-@\t\r";

  private Guard() {
  }

  /** Whether a spreadsheet might take this text for a formula. */
  public static boolean isNeeded(String text) {
    return !text.isEmpty() && TRIGGERS.indexOf(text.charAt(0)) >= 0;
  }

  /** The text with an apostrophe before it. */
  public static String guarded(String text) {
    return "'" + text;
  }
}
