package daubline.export.format;

import daubline.export.Cell;
import daubline.export.Column;
import daubline.export.Style;
import daubline.export.Table;
import java.io.IOException;
import java.util.List;

/** A table as a piece of HTML: caption, column headings marked as such, notes below. */
public final class Html implements TableWriter {

  private final Style style;

  /** A writer in a style. */
  public Html(Style style) {
    this.style = style;
  }

  @Override
  public void write(Table full, Appendable out) throws IOException {
    Table table = PrintTable.of(full);
    out.append("<figure class=\"table\" id=\"table-").append(escape(table.id())).append("\">\n<table>\n<caption><b>").append(escape(table.title()))
        .append(".</b> ").append(escape(table.caption())).append("</caption>\n");
    if (table.rows().isEmpty()) {
      out.append("<tbody><tr><td>").append(PrintTable.nothing(style)).append("</td></tr></tbody>\n</table>\n</figure>\n");
      return;
    }
    out.append("<thead><tr>");
    for (Column column : table.columns()) {
      out.append("<th scope=\"col\"").append(side(column)).append('>').append(escape(column.fullHeading())).append("</th>");
    }
    out.append("</tr></thead>\n<tbody>\n");
    for (List<Cell> row : table.rows()) {
      row(table, row, out);
    }
    out.append("</tbody>\n</table>\n");
    for (String note : PrintTable.notes(table, style)) {
      out.append("<p class=\"note\">").append(escape(note)).append("</p>\n");
    }
    out.append("</figure>\n");
  }

  private void row(Table table, List<Cell> row, Appendable out) throws IOException {
    out.append("<tr>");
    for (int c = 0; c < row.size(); c++) {
      out.append("<td").append(side(table.columns().get(c))).append('>').append(escape(style.print(row.get(c))));
      if (row.get(c).note() > 0) {
        out.append("<sup>").append(Integer.toString(row.get(c).note())).append("</sup>");
      }
      out.append("</td>");
    }
    out.append("</tr>\n");
  }

  private static String side(Column column) {
    return column.kind() == Column.Kind.NUMBER ? " class=\"number\"" : "";
  }

  /** Text for HTML and XML: the signs that mean something are written as entities, illegal characters are replaced. */
  public static String escape(String text) {
    return CellText.storable(text).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
  }
}
