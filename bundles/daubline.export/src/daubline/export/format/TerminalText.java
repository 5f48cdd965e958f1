package daubline.export.format;

import daubline.export.Cell;
import daubline.export.Column;
import daubline.export.Style;
import daubline.export.Table;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** A table for a terminal: aligned columns, long words wrapped, notes below. */
public final class TerminalText implements TableWriter {

  private static final int WIDEST = 36;
  private static final String GAP = "  ";

  private final Style style;

  /** A writer in a style. */
  public TerminalText(Style style) {
    this.style = style;
  }

  @Override
  public void write(Table table, Appendable out) throws IOException {
    List<List<List<String>>> rows = new ArrayList<>();
    rows.add(table.columns().stream().map(c -> Wrap.lines(c.fullHeading(), WIDEST)).toList());
    table.rows().forEach(row -> rows.add(row.stream().map(this::lines).toList()));
    int[] widths = widths(rows, table.columns().size());
    out.append(table.title()).append("\n\n");
    for (int r = 0; r < rows.size(); r++) {
      row(rows.get(r), widths, table.columns(), out);
      if (r == 0) {
        rule(widths, out);
      }
    }
    out.append('\n');
    for (String note : style.notes(table)) {
      for (String line : Wrap.lines(note, 100)) {
        out.append(line).append('\n');
      }
    }
  }

  private List<String> lines(Cell cell) {
    return Wrap.lines(style.printNoted(cell), WIDEST);
  }

  private static int[] widths(List<List<List<String>>> rows, int columns) {
    int[] widths = new int[columns];
    for (List<List<String>> row : rows) {
      for (int c = 0; c < columns; c++) {
        widths[c] = Math.max(widths[c], row.get(c).stream().mapToInt(Wrap::width).max().orElse(0));
      }
    }
    return widths;
  }

  private static void row(List<List<String>> row, int[] widths, List<Column> columns, Appendable out) throws IOException {
    int height = row.stream().mapToInt(List::size).max().orElse(0);
    for (int i = 0; i < height; i++) {
      StringBuilder line = new StringBuilder();
      for (int c = 0; c < widths.length; c++) {
        String text = i < row.get(c).size() ? row.get(c).get(i) : "";
        String pad = " ".repeat(widths[c] - Wrap.width(text));
        line.append(c == 0 ? "" : GAP).append(columns.get(c).kind() == Column.Kind.NUMBER ? pad + text : text + pad);
      }
      out.append(line.toString().stripTrailing()).append('\n');
    }
  }

  private static void rule(int[] widths, Appendable out) throws IOException {
    for (int c = 0; c < widths.length; c++) {
      out.append(c == 0 ? "" : GAP).append("-".repeat(widths[c]));
    }
    out.append('\n');
  }
}
