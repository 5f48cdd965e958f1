package daubline.export.format;

import daubline.export.Cell;
import daubline.export.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;

/** A named range of a template: what is in its way, and what is written into it. */
final class TemplateRange {

  private final XSSFSheet sheet;
  private final CellRangeAddress range;
  private final WorkbookStyles styles;
  private final List<String> complaints = new ArrayList<>();
  private CellRangeAddress filled;

  TemplateRange(XSSFSheet sheet, AreaReference area, WorkbookStyles styles) {
    this.sheet = sheet;
    this.styles = styles;
    int lastRow = area.isWholeColumnReference() ? SpreadsheetVersion.EXCEL2007.getLastRowIndex() : area.getLastCell().getRow();
    this.range = new CellRangeAddress(area.getFirstCell().getRow(), lastRow, area.getFirstCell().getCol(), area.getLastCell().getCol());
    this.filled = range;
  }

  /** What could not be stored as it was. */
  List<String> complaints() {
    return complaints;
  }

  /** The range that now holds what was written, as a formula. */
  String filled() {
    return new AreaReference(new CellReference(sheet.getSheetName(), filled.getFirstRow(), filled.getFirstColumn(), true, true),
        new CellReference(sheet.getSheetName(), filled.getLastRow(), filled.getLastColumn(), true, true), SpreadsheetVersion.EXCEL2007).formatAsString();
  }

  /** The texts of the first row when every cell of it is text and the range has more rows; otherwise none. */
  List<String> headings() {
    List<String> headings = new ArrayList<>();
    for (int c = range.getFirstColumn(); range.getLastRow() > range.getFirstRow() && c <= range.getLastColumn(); c++) {
      XSSFCell cell = cell(range.getFirstRow(), c);
      if (cell == null || cell.getCellType() != CellType.STRING || cell.getStringCellValue().isBlank()) {
        return List.of();
      }
      headings.add(cell.getStringCellValue());
    }
    return headings;
  }

  /** Writes one text into the first cell; returns what is in the way. */
  Optional<String> line(String text) {
    return rows(List.of(List.of(Cell.text(text))), List.of(Column.text("line", "")), 0);
  }

  /**
   * Writes rows.
   *
   * @param kept rows of the range above them that are left as they are
   * @return what is in the way, in which case nothing is written
   */
  Optional<String> rows(List<List<Cell>> rows, List<Column> columns, int kept) {
    int top = range.getFirstRow() + kept;
    CellRangeAddress target = new CellRangeAddress(range.getFirstRow(), Math.max(top + rows.size() - 1, range.getFirstRow()), range.getFirstColumn(),
        range.getFirstColumn() + columns.size() - 1);
    if (target.getLastRow() > SpreadsheetVersion.EXCEL2007.getLastRowIndex() || target.getLastColumn() > SpreadsheetVersion.EXCEL2007.getLastColumnIndex()) {
      return Optional.of("the sheet has no room for " + rows.size() + " rows and " + columns.size() + " columns");
    }
    Optional<String> obstacle = obstacle(target, top);
    if (obstacle.isEmpty()) {
      List<CellStyle> own = ownStyles(columns.size(), kept == 0 ? range.getFirstRow() : top);
      clear(top);
      for (int r = 0; r < rows.size(); r++) {
        write(rows.get(r), columns, top + r, own);
      }
      filled = target;
      sheet.getTables().stream().filter(t -> isAround(t, target)).forEach(t -> t.setArea(new AreaReference(t.getStartCellReference(),
          new CellReference(Math.max(target.getLastRow(), t.getStartRowIndex() + 1), t.getEndColIndex()), SpreadsheetVersion.EXCEL2007)));
    }
    return obstacle;
  }

  /** Nothing outside the range is overwritten, nor a formula in it, nor a part of merged cells or of a table of another shape. */
  private Optional<String> obstacle(CellRangeAddress target, int top) {
    if (sheet.getMergedRegions().stream().anyMatch(m -> m.intersects(target))) {
      return Optional.of("there are merged cells in the way");
    }
    for (XSSFTable table : sheet.getTables()) {
      boolean meets = target.intersects(new CellRangeAddress(table.getStartRowIndex(), table.getEndRowIndex(), table.getStartColIndex(), table.getEndColIndex()));
      if (meets && !(isAround(table, target) && top > target.getFirstRow())) {
        return Optional.of("it meets table " + table.getName() + " without being as wide and beginning with its headings");
      }
    }
    for (int r = top; r <= target.getLastRow(); r++) {
      for (int c = target.getFirstColumn(); c <= target.getLastColumn(); c++) {
        XSSFCell cell = cell(r, c);
        if (cell != null && cell.getCellType() == CellType.FORMULA) {
          return Optional.of("cell " + cell.getAddress() + " holds a formula that would be overwritten");
        }
        if (cell != null && cell.getCellType() != CellType.BLANK && !range.isInRange(r, c)) {
          return Optional.of("cell " + cell.getAddress() + ", outside the range, is not empty and would be overwritten");
        }
      }
    }
    return Optional.empty();
  }

  private static boolean isAround(XSSFTable table, CellRangeAddress target) {
    return table.getStartRowIndex() == target.getFirstRow() && table.getStartColIndex() == target.getFirstColumn() && table.getEndColIndex() == target.getLastColumn();
  }

  /** The template's own formats of the first row that is filled; null where it has none. */
  private List<CellStyle> ownStyles(int columns, int row) {
    List<CellStyle> own = new ArrayList<>();
    for (int c = 0; c < columns; c++) {
      XSSFCell cell = cell(row, range.getFirstColumn() + c);
      own.add(cell == null || cell.getCellStyle().getIndex() == 0 ? null : cell.getCellStyle());
    }
    return own;
  }

  /** Examples that stand in the range below what is written would be taken for data. */
  private void clear(int top) {
    for (int r = top; r <= Math.min(range.getLastRow(), sheet.getLastRowNum()); r++) {
      for (int c = range.getFirstColumn(); c <= range.getLastColumn(); c++) {
        XSSFCell cell = cell(r, c);
        if (cell != null && cell.getCellType() != CellType.FORMULA) {
          cell.setBlank();
        }
      }
    }
  }

  private XSSFCell cell(int row, int column) {
    XSSFRow there = sheet.getRow(row);
    return there == null ? null : there.getCell(column);
  }

  private void write(List<Cell> cells, List<Column> columns, int number, List<CellStyle> own) {
    XSSFRow row = sheet.getRow(number) == null ? sheet.createRow(number) : sheet.getRow(number);
    for (int c = 0; c < cells.size(); c++) {
      Cell cell = cells.get(c);
      XSSFCell written = row.getCell(range.getFirstColumn() + c, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
      if (cell.isPlainNumber()) {
        written.setCellValue(cell.number());
        written.setCellStyle(own.get(c) == null ? styles.number(cell.decimals(), 0) : own.get(c));
      } else if (!cell.text().isEmpty()) {
        if (!CellText.isStorable(cell.text())) {
          complaints.add("cell " + written.getAddress() + ": " + CellText.complaint(cell.text()));
        }
        written.setCellValue(CellText.escaped(CellText.storable(cell.text())));
        written.setCellStyle(own.get(c) == null || Guard.isNeeded(cell.text()) ? styles.text(cell.text(), columns.get(c).kind() == Column.Kind.NUMBER) : own.get(c));
      }
    }
  }
}
