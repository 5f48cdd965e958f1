package daubline.export.format;

import daubline.export.Cell;
import daubline.export.Column;
import daubline.export.DataTable;
import daubline.export.Table;
import java.io.IOException;

/**
 * The archive form: RFC 4180, column ids as heading, numbers unrounded with a point, text exactly as it is. Made to be
 * read by programs; a spreadsheet that opens it may take text for formulas, which {@link SpreadsheetCsv} prevents.
 */
public final class ArchiveCsv implements TableWriter {

  private static final CsvLines CSV = new CsvLines(',');

  @Override
  public void write(Table table, Appendable out) throws IOException {
    Table data = DataTable.of(table);
    CSV.line(data.columns().stream().map(Column::id).toList(), out);
    for (var row : data.rows()) {
      CSV.line(row.stream().map(ArchiveCsv::text).toList(), out);
    }
  }

  private static String text(Cell cell) {
    return cell.isPlainNumber() ? Plain.number(cell.number()) : cell.text();
  }
}
