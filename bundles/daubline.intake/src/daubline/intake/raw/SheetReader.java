package daubline.intake.raw;

import daubline.base.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Reads one sheet of a workbook and says what a person would not see in it. */
final class SheetReader {

  private static final int SHOWN = 6;

  private final String place;
  private final XSSFSheet sheet;
  private final List<Finding> findings = new ArrayList<>();
  private final List<String> formulas = new ArrayList<>();
  private final List<String> hidden = new ArrayList<>();

  SheetReader(String file, XSSFSheet sheet) {
    this.place = file + ", sheet “" + sheet.getSheetName() + "”";
    this.sheet = sheet;
  }

  RawSheet read() {
    List<RawRow> rows = new ArrayList<>();
    for (Row row : sheet) {
      List<RawCell> cells = new ArrayList<>();
      for (int column = 0; column < row.getLastCellNum(); column++) {
        cells.add(cell((XSSFCell) row.getCell(column)));
      }
      RawRow read = new RawRow(row.getRowNum() + 1, cells);
      rows.add(read);
      if (!read.isEmpty() && row.getZeroHeight()) {
        hidden.add(String.valueOf(read.number()));
      }
    }
    say();
    return new RawSheet(sheet.getSheetName(), rows, findings);
  }

  private RawCell cell(XSSFCell cell) {
    if (cell == null) {
      return RawCell.EMPTY;
    }
    if (cell.getCellType() == CellType.FORMULA) {
      formulas.add(cell.getReference());
    }
    return CellReader.read(cell);
  }

  private void say() {
    if (!formulas.isEmpty()) {
      findings.add(Finding.note("cell.formula", place, "held formulas: " + some(formulas)
          + "; the values that the spreadsheet program last worked out are taken",
          "open the file in that program and save it if they may be out of date; formulas are never worked out here"));
    }
    if (!hidden.isEmpty()) {
      findings.add(Finding.warning("row.hidden", place, "hidden rows are read too: " + some(hidden),
          "delete them in the file if they are not meant"));
    }
    String columns = hiddenColumns();
    if (!columns.isEmpty()) {
      findings.add(Finding.warning("column.hidden", place, "hidden columns are read too: " + columns,
          "delete them in the file if they are not meant"));
    }
    if (!sheet.getMergedRegions().isEmpty()) {
      List<String> merged = sheet.getMergedRegions().stream().map(CellRangeAddress::formatAsString).toList();
      findings.add(Finding.warning("cell.merged", place, "merged cells: " + some(merged)
          + "; only the first of them holds a value, the others count as empty",
          "part the cells and repeat the value in each row it belongs to"));
    }
  }

  private String hiddenColumns() {
    List<String> columns = new ArrayList<>();
    int last = 0;
    for (Row row : sheet) {
      last = Math.max(last, row.getLastCellNum());
    }
    for (int column = 0; column < last; column++) {
      if (sheet.isColumnHidden(column)) {
        columns.add(CellReference.convertNumToColString(column));
      }
    }
    return some(columns);
  }

  private static String some(List<String> all) {
    String shown = all.stream().limit(SHOWN).collect(Collectors.joining(", "));
    return all.size() > SHOWN ? shown + " and " + (all.size() - SHOWN) + " more" : shown;
  }
}
