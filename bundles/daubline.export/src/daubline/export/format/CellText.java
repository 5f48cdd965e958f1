package daubline.export.format;

import java.util.regex.Pattern;

/** What a cell of a workbook may hold as text (ECMA-376 part 1: ST_Xstring; XML 1.0, production 2). */
final class CellText {

  /** Characters that one cell holds at most. */
  static final int LONGEST = 32_767;

  private static final char REPLACEMENT = '\uFFFD';
  private static final Pattern LOOKS_ESCAPED = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

  private CellText() {
  }

  /** Whether it can be stored as it is. */
  static boolean isStorable(String text) {
    return text.length() <= LONGEST && text.equals(legal(text));
  }

  /** The text as it can be stored: without illegal characters, cut where it is too long. */
  static String storable(String text) {
    String legal = legal(text);
    if (legal.length() <= LONGEST) {
      return legal;
    }
    int end = Character.isHighSurrogate(legal.charAt(LONGEST - 2)) ? LONGEST - 2 : LONGEST - 1;
    return legal.substring(0, end) + "…";
  }

  /** What was done to a text that could not be stored. */
  static String complaint(String text) {
    return text.length() > LONGEST ? "text of " + text.length() + " characters cut to " + LONGEST
        : "characters that XML does not allow replaced by " + REPLACEMENT;
  }

  /** A text in which "_x0041_" stays these seven characters and is not read as a letter A. */
  static String escaped(String storable) {
    return LOOKS_ESCAPED.matcher(storable).replaceAll("_x005F_");
  }

  private static String legal(String text) {
    StringBuilder legal = null;
    for (int i = 0; i < text.length(); i++) {
      boolean pair = Character.isHighSurrogate(text.charAt(i)) && i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1));
      if (!pair && !isLegal(text.charAt(i))) {
        legal = legal == null ? new StringBuilder(text) : legal;
        legal.setCharAt(i, REPLACEMENT);
      }
      i += pair ? 1 : 0;
    }
    return legal == null ? text : legal.toString();
  }

  private static boolean isLegal(char c) {
    return c >= ' ' ? !Character.isSurrogate(c) && c != '\uFFFE' && c != '\uFFFF' : c == '\t' || c == '\n' || c == '\r';
  }
}
