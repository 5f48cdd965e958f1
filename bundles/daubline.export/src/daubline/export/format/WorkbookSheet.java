package daubline.export.format;

import daubline.export.Cell;
import daubline.export.Column;
import daubline.export.Table;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.IntFunction;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTable;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTableColumn;

/** One table on one sheet: one header row, frozen, named as a table, no merged cells. */
final class WorkbookSheet {

  private static final int NARROWEST = 8;
  private static final int WIDEST = 48;
  private static final int SAMPLE = 1000;
  private static final float LINE = 14.5f;
  private static final float TALLEST = 400;

  private final SXSSFWorkbook book;
  private final WorkbookStyles styles;
  private final SXSSFSheet sheet;
  private final Table table;
  private final int[] widths;
  private final List<String> complaints = new ArrayList<>();

  WorkbookSheet(SXSSFWorkbook book, WorkbookStyles styles, String name, Table table) {
    this.book = book;
    this.styles = styles;
    this.table = table;
    this.widths = new int[table.columns().size()];
    this.sheet = book.createSheet(name);
  }

  /** Fills the sheet; returns what could not be stored as it was. */
  List<String> fill() {
    setWidths();
    List<String> headings = header();
    for (int r = 0; r < table.rows().size(); r++) {
      row(r);
    }
    sheet.createFreezePane(table.columns().get(0).kind() != Column.Kind.NUMBER && table.columns().size() > 3 ? 1 : 0, 1);
    sheet.setRepeatingRows(org.apache.poi.ss.util.CellRangeAddress.valueOf("1:1"));
    sheet.getPrintSetup().setLandscape(true);
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitHeight((short) 0);
    if (!table.rows().isEmpty()) {
      nameTable(headings);
      WorkbookCharts.add(book.getXSSFWorkbook().getSheet(sheet.getSheetName()), table);
    }
    return complaints;
  }

  private List<String> header() {
    Set<String> taken = new HashSet<>();
    List<String> headings = new ArrayList<>();
    Row row = sheet.createRow(0);
    for (Column column : table.columns()) {
      String text = CellText.storable(column.fullHeading()).replaceAll("\\s+", " ");
      String free = text.isEmpty() ? column.id() : text;
      for (int n = 2; !taken.add(free.toLowerCase(Locale.ROOT)); n++) {
        free = text + " " + n;
      }
      var cell = row.createCell(headings.size());
      cell.setCellValue(CellText.escaped(free));
      cell.setCellStyle(styles.header(column.kind() == Column.Kind.NUMBER));
      headings.add(free);
    }
    setHeight(row, headings::get);
    return headings;
  }

  private void row(int number) {
    Row row = sheet.createRow(number + 1);
    List<Cell> cells = table.rows().get(number);
    for (int c = 0; c < cells.size(); c++) {
      Cell cell = cells.get(c);
      if (cell.isPlainNumber()) {
        var written = row.createCell(c);
        written.setCellValue(cell.number());
        written.setCellStyle(styles.number(cell.decimals(), cell.note()));
      } else if (!cell.text().isEmpty()) {
        text(row, c, cell, number);
      }
    }
    setHeight(row, c -> cells.get(c).text());
  }

  /** Not every reader finds the height of wrapped text by itself. */
  private void setHeight(Row row, IntFunction<String> texts) {
    int lines = 1;
    for (int c = 0; c < widths.length; c++) {
      String text = texts.apply(c);
      if (text.length() >= widths[c] || text.indexOf('\n') >= 0) {
        lines = Math.max(lines, Wrap.lines(text, widths[c]).size());
      }
    }
    if (lines > 1) {
      row.setHeightInPoints(Math.min(TALLEST, lines * LINE + 2));
    }
  }

  private void text(Row row, int column, Cell cell, int number) {
    String text = cell.note() == 0 ? cell.text() : cell.text() + " " + daubline.export.Style.mark(cell.note());
    if (!CellText.isStorable(text)) {
      complaints.add(table.title() + ", row " + (number + 2) + ", " + table.columns().get(column).heading() + ": " + CellText.complaint(text));
    }
    var written = row.createCell(column);
    written.setCellValue(CellText.escaped(CellText.storable(text)));
    written.setCellStyle(styles.text(text, table.columns().get(column).kind() == Column.Kind.NUMBER));
  }

  private void setWidths() {
    for (int c = 0; c < table.columns().size(); c++) {
      int widest = Math.max(longestWord(table.columns().get(c).fullHeading()), NARROWEST);
      for (int r = 0; r < Math.min(SAMPLE, table.rows().size()); r++) {
        widest = Math.max(widest, Math.min(WIDEST, Wrap.width(table.rows().get(r).get(c).text())));
      }
      widths[c] = widest;
      sheet.setColumnWidth(c, (widest + 3) * 256);
    }
  }

  private static int longestWord(String heading) {
    int longest = 0;
    for (String word : heading.split("\\s+")) {
      longest = Math.max(longest, word.length());
    }
    return Math.min(WIDEST, longest);
  }

  private void nameTable(List<String> headings) {
    AreaReference area = new AreaReference(new CellReference(0, 0), new CellReference(table.rows().size(), headings.size() - 1),
        SpreadsheetVersion.EXCEL2007);
    XSSFTable named = book.getXSSFWorkbook().getSheet(sheet.getSheetName()).createTable(area);
    named.setName(tableName(table.id()));
    named.setDisplayName(tableName(table.id()));
    CTTable xml = named.getCTTable();
    xml.addNewAutoFilter().setRef(area.formatAsString());
    List<CTTableColumn> columns = xml.getTableColumns().getTableColumnList();
    for (int c = 0; c < columns.size(); c++) {
      columns.get(c).setName(CellText.escaped(headings.get(c)));
    }
    named.setStyleName("TableStyleLight1");
    xml.getTableStyleInfo().setShowRowStripes(true);
  }

  /** A name that can be no cell reference. */
  static String tableName(String id) {
    return "table_" + id.replaceAll("[^A-Za-z0-9_]", "_");
  }
}
