package daubline.export.format;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Breaks text into lines of a width. */
public final class Wrap {

  private Wrap() {
  }

  /** The columns that a text fills on a terminal: one for each visible character. */
  public static int width(String text) {
    return (int) text.codePoints().filter(c -> Character.getType(c) != Character.NON_SPACING_MARK && !Character.isISOControl(c)).count();
  }

  /** The lines of a text, broken between words where it can be; at least one. */
  public static List<String> lines(String text, int width) {
    List<String> lines = new ArrayList<>();
    text.lines().forEach(line -> wrap(line.replace('\t', ' '), width, lines));
    return lines.isEmpty() ? List.of("") : lines;
  }

  private static void wrap(String text, int width, List<String> lines) {
    BreakIterator breaks = BreakIterator.getLineInstance(Locale.ROOT);
    breaks.setText(text);
    StringBuilder line = new StringBuilder();
    for (int from = breaks.first(), to = breaks.next(); to != BreakIterator.DONE; from = to, to = breaks.next()) {
      String piece = text.substring(from, to);
      if (line.length() > 0 && width((line + piece).stripTrailing()) > width) {
        lines.add(line.toString().stripTrailing());
        line.setLength(0);
      }
      line.append(piece);
    }
    lines.add(line.toString().stripTrailing());
  }
}
