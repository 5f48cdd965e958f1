package daubline.record.print;

import daubline.record.RecordWords;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Prints one form as ruled paper with numbered rows tall enough for a cold hand. */
final class SheetPrinter {

  private static final float NUMBER = 28;
  private static final float ROW = 26;
  private static final float LINE = 13;
  private static final float PAD = 4;
  private static final float SHARE = 62;
  private static final int WIDER = 3;

  private final Paper paper;
  private final RecordWords words;
  private final String trial;
  private final String day;

  SheetPrinter(Paper paper, RecordWords words, String trial, String day) {
    this.paper = paper;
    this.words = words;
    this.trial = trial;
    this.day = day;
  }

  /**
   * Prints a form.
   *
   * @param begun what the first cells of the rows hold; empty for blank rows on one sheet
   */
  void print(String title, List<String> headings, List<Double> shares, List<String> begun) throws IOException {
    List<List<Integer>> sheets = spread(headings, shares);
    float head = Paper.EDGE + 2 * ROW + headLines(headings, shares) * LINE + 2 * PAD;
    int rows = (int) ((paper.height() - Paper.EDGE - ROW - head) / ROW);
    int from = 0;
    do {
      for (int part = 0; part < sheets.size(); part++) {
        sheet(title + (sheets.size() > 1 ? " " + words.of("print.part", part + 1, sheets.size()) : ""), sheets.get(part), headings, shares, head, rows, begun, from);
      }
      from += rows;
    } while (from < begun.size());
  }

  private float least(String heading, double share) {
    float word = 0;
    for (String part : heading.split("\\s+")) {
      word = Math.max(word, paper.measure(part, Paper.SMALLEST));
    }
    return Math.max(word + 2 * PAD, (float) (SHARE * share));
  }

  /** Which columns stand on which sheet: as many as fit, in their order. */
  private List<List<Integer>> spread(List<String> headings, List<Double> shares) {
    List<List<Integer>> sheets = new ArrayList<>(List.of(new ArrayList<>()));
    float used = NUMBER;
    for (int i = 0; i < headings.size(); i++) {
      float wide = least(headings.get(i), shares.get(i));
      if (used + wide > paper.width() - 2 * Paper.EDGE && !sheets.get(sheets.size() - 1).isEmpty()) {
        sheets.add(new ArrayList<>());
        used = NUMBER;
      }
      sheets.get(sheets.size() - 1).add(i);
      used += wide;
    }
    return sheets;
  }

  private int headLines(List<String> headings, List<Double> shares) {
    int lines = 1;
    for (int i = 0; i < headings.size(); i++) {
      lines = Math.max(lines, paper.wrap(headings.get(i), Paper.SMALLEST, least(headings.get(i), shares.get(i)) - 2 * PAD).size());
    }
    return lines;
  }

  private void sheet(String title, List<Integer> columns, List<String> headings, List<Double> shares, float head, int rows, List<String> begun, int from)
      throws IOException {
    paper.sheet();
    paper.text(title, Paper.EDGE, Paper.EDGE + 14, 15);
    String line = words.of("print.head", trial.isEmpty() ? "____________________" : trial, day.isEmpty() ? "______________" : day);
    paper.text(line, Paper.EDGE, Paper.EDGE + 14 + ROW - 4, Paper.SMALLEST);
    float room = paper.width() - 2 * Paper.EDGE - NUMBER;
    float wanted = 0;
    for (int c : columns) {
      wanted += least(headings.get(c), shares.get(c));
    }
    float stretch = Math.min(WIDER, room / wanted);
    float x = Paper.EDGE + NUMBER;
    float bottom = head + rows * ROW;
    paper.line(Paper.EDGE, head - ROW / 4, Paper.EDGE, bottom);
    paper.line(x, head - ROW / 4, x, bottom);
    for (int c : columns) {
      float wide = least(headings.get(c), shares.get(c)) * stretch;
      List<String> lines = paper.wrap(headings.get(c), Paper.SMALLEST, wide - 2 * PAD);
      for (int i = 0; i < lines.size(); i++) {
        paper.text(lines.get(i), x + PAD, head - PAD - ROW / 4 - (lines.size() - 1 - i) * LINE, Paper.SMALLEST);
      }
      x += wide;
      paper.line(x, head - ROW / 4, x, bottom);
    }
    rows(columns, head, rows, begun, from, x);
    paper.text(words.of("print.foot"), Paper.EDGE, paper.height() - Paper.EDGE + 4, Paper.SMALLEST);
  }

  private void rows(List<Integer> columns, float head, int rows, List<String> begun, int from, float right) throws IOException {
    paper.line(Paper.EDGE, head - ROW / 4, right, head - ROW / 4);
    for (int i = 0; i < rows; i++) {
      float y = head + i * ROW;
      int row = from + i;
      paper.text(String.valueOf(row + 1), Paper.EDGE + PAD, y + ROW - 9, Paper.SMALLEST);
      if (row < begun.size() && columns.get(0) == 0) {
        paper.text(begun.get(row), Paper.EDGE + NUMBER + PAD, y + ROW - 9, Paper.SMALLEST);
      }
      paper.line(Paper.EDGE, y + ROW, right, y + ROW);
    }
  }
}
