package daubline.export.format;

import daubline.export.Cell;
import daubline.export.Column;
import daubline.export.Style;
import daubline.export.Table;
import java.io.IOException;
import java.util.List;

/** A table in Markdown, in the form with bars. */
public final class Markdown implements TableWriter {

  private final Style style;

  /** A writer in a style. */
  public Markdown(Style style) {
    this.style = style;
  }

  @Override
  public void write(Table full, Appendable out) throws IOException {
    Table table = PrintTable.of(full);
    out.append("**").append(escape(table.title())).append(".** ").append(escape(table.caption())).append("\n\n");
    if (table.rows().isEmpty()) {
      out.append(PrintTable.nothing(style)).append("\n");
      return;
    }
    line(table.columns().stream().map(c -> escape(c.fullHeading())).toList(), out);
    line(table.columns().stream().map(c -> c.kind() == Column.Kind.NUMBER ? "---:" : ":---").toList(), out);
    for (List<Cell> row : table.rows()) {
      line(row.stream().map(c -> escape(style.printNoted(c))).toList(), out);
    }
    for (String note : PrintTable.notes(table, style)) {
      out.append('\n').append(escape(note)).append('\n');
    }
  }

  private static void line(List<String> cells, Appendable out) throws IOException {
    out.append("| ").append(String.join(" | ", cells)).append(" |\n");
  }

  /** Every sign that means something in Markdown or opens a tag loses its meaning; lines join. */
  private static String escape(String text) {
    StringBuilder escaped = new StringBuilder();
    text.chars().forEach(c -> {
      if ("\\`*_{}[]<>#|~&".indexOf(c) >= 0) {
        escaped.append('\\');
      }
      escaped.append(c == '\n' || c == '\r' || c == '\t' ? ' ' : (char) c);
    });
    return escaped.toString();
  }
}
