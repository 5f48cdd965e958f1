package daubline.export.format;

import daubline.export.Cell;
import daubline.export.Column;
import daubline.export.DataTable;
import daubline.export.Table;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * The form for a spreadsheet: headings with units, a byte order mark so that letters arrive as they are, and an
 * apostrophe before text that would become a formula. Which cells got one is reported, so that it can be taken off.
 */
public final class SpreadsheetCsv implements TableWriter {

  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private final boolean decimalComma;
  private final CsvLines csv;
  private final List<Guarded> guarded = new ArrayList<>();

  /**
   * A cell whose text got an apostrophe.
   *
   * @param table id of the table
   * @param row row below the heading, from 1
   * @param column id of the column
   */
  public record Guarded(String table, int row, String column) {
  }

  /**
   * A writer.
   *
   * @param decimalComma for spreadsheets that expect a decimal comma and semicolons between the fields
   */
  public SpreadsheetCsv(boolean decimalComma) {
    this.decimalComma = decimalComma;
    this.csv = new CsvLines(decimalComma ? ';' : ',');
  }

  @Override
  public void write(Table table, Appendable out) throws IOException {
    Table data = DataTable.of(table);
    out.append(BYTE_ORDER_MARK);
    csv.line(data.columns().stream().map(Column::fullHeading).map(SpreadsheetCsv::heading).toList(), out);
    for (int r = 0; r < data.rows().size(); r++) {
      List<String> fields = new ArrayList<>();
      for (int c = 0; c < data.columns().size(); c++) {
        fields.add(field(data.rows().get(r).get(c), data.id(), r + 1, data.columns().get(c).id()));
      }
      csv.line(fields, out);
    }
  }

  /** The cells guarded so far. */
  public List<Guarded> guarded() {
    return List.copyOf(guarded);
  }

  private static String heading(String text) {
    return Guard.isNeeded(text) ? Guard.guarded(text) : text;
  }

  private String field(Cell cell, String table, int row, String column) {
    if (cell.isPlainNumber()) {
      String number = Plain.number(cell.number());
      return decimalComma ? number.replace('.', ',') : number;
    }
    if (!Guard.isNeeded(cell.text())) {
      return cell.text();
    }
    guarded.add(new Guarded(table, row, column));
    return Guard.guarded(cell.text());
  }
}
