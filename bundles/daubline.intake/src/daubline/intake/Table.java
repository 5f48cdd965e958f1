package daubline.intake;

import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.intake.raw.RawRow;
import java.util.List;
import java.util.Map;

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
 */
record Table(String place, boolean workbook, int header, List<Bound> columns, List<String> unread, List<RawRow> rows,
    DecimalSign decimal, DateOrder dates, Map<String, String> fixed, List<Finding> findings) {

  /** A table that could not be read. */
  static Table refused(String place, List<Finding> findings) {
    return new Table(place, false, 0, List.of(), List.of(), List.of(), DecimalSign.POINT, DateOrder.YMD, Map.of(), findings);
  }

  boolean isRefused() {
    return findings.stream().anyMatch(Finding::isError);
  }
}
