package daubline.cli;

import daubline.base.Printed;
import daubline.export.format.Wrap;
import java.util.ArrayList;
import java.util.List;

/** Text of a page's width: long sentences are wrapped and indented, columns are aligned. */
final class Page {

  static final int WIDTH = 100;

  private Page() {
  }

  /** A sentence, its lines indented alike. */
  static void say(int indent, String sentence) {
    hang(indent, indent, sentence);
  }

  /** A sentence whose lines after the first are indented further. */
  static void hang(int first, int next, String sentence) {
    int indent = first;
    for (String line : Wrap.lines(sentence, WIDTH - next)) {
      Out.line("%s", " ".repeat(indent) + line);
      indent = next;
    }
  }

  /** Rows of cells; a column is as wide as its widest cell, and those after the first few are aligned to the right. */
  static void table(int indent, int words, List<List<String>> rows) {
    List<Integer> widths = new ArrayList<>();
    for (List<String> row : rows) {
      for (int c = 0; c < row.size(); c++) {
        int width = Wrap.width(row.get(c));
        if (c == widths.size()) {
          widths.add(width);
        }
        widths.set(c, Math.max(widths.get(c), width));
      }
    }
    rows.forEach(row -> Out.line("%s", " ".repeat(indent) + row(row, widths, words)));
  }

  private static String row(List<String> row, List<Integer> widths, int words) {
    StringBuilder line = new StringBuilder();
    for (int c = 0; c < row.size(); c++) {
      String pad = " ".repeat(widths.get(c) - Wrap.width(row.get(c)));
      line.append(c == 0 ? "" : "  ").append(c < words ? row.get(c) + pad : pad + row.get(c));
    }
    return line.toString().stripTrailing();
  }

  /** A text cut to a length. */
  static String cut(String text, int length) {
    return text.length() <= length ? text : text.substring(0, length - 1) + "…";
  }

  /** A share as whole per cent; "–" when there is none. */
  static String percent(double share) {
    return Double.isNaN(share) ? "–" : Printed.fixed(100 * share, 0) + "\u00A0%";
  }

  /** Two numbers from 0 to 100. */
  static String span(double low, double high) {
    return Double.isNaN(low) ? "–" : Printed.fixed(low, 0) + "–" + Printed.fixed(high, 0);
  }

  /** A probability to two decimals; a small one is said to be below the smallest printed, never zero. */
  static String probability(double p) {
    return Double.isNaN(p) ? "–" : p < 0.001 ? "<0.001" : Printed.fixed(p, p < 0.095 ? 3 : 2);
  }
}
