package daubline.intake;

import daubline.base.DateOrder;
import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.intake.raw.RawRow;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellReference;

/**
 * A table with its columns recognised.
 *
 * @param place file and sheet, for findings
 * @param workbook whether its cells have letters rather than numbers
 * @param header the number of the row of headings
 * @param columns the columns that are read
 * @param unread the headings of columns that are not read
 * @param rows the rows below the headings, without empty ones
 * @param decimal the decimal sign of its texts
 * @param dates the order of its dates
 * @param fixed texts for every row, by column
 * @param findings what was noticed
 * @param facts what is known of it beside its cells
 */
record Table(String place, boolean workbook, int header, List<Bound> columns, List<String> unread, List<RawRow> rows,
    DecimalSign decimal, DateOrder dates, Map<String, String> fixed, List<Finding> findings, RowFacts facts) {

  /** A table that could not be read. */
  static Table refused(String place, List<Finding> findings) {
    return new Table(place, false, 0, List.of(), List.of(), List.of(), DecimalSign.POINT, DateOrder.YMD, Map.of(), findings, RowFacts.NONE);
  }

  /** The same with other columns, rows and facts. */
  Table with(List<Bound> otherColumns, List<RawRow> otherRows, RowFacts other) {
    return new Table(place, workbook, header, otherColumns, unread, otherRows, decimal, dates, fixed, findings, other);
  }

  /** How a person finds a row in the file: a column where samples stand in columns. */
  String row(int number) {
    return facts.turned() ? "column " + (workbook ? CellReference.convertNumToColString(number - 1) : String.valueOf(number)) : "row " + number;
  }

  /** Where the cell of a row under a heading stands in the file. */
  String cell(int row, Bound column) {
    int across = facts.turned() ? row - 1 : column.index();
    int down = facts.turned() ? column.index() + 1 : row;
    return workbook ? place + ", cell " + CellReference.convertNumToColString(across) + down + " (" + column.heading() + ")"
        : place + ", row " + down + ", column " + (across + 1) + " (" + column.heading() + ")";
  }

  boolean isRefused() {
    return findings.stream().anyMatch(Finding::isError);
  }
}
