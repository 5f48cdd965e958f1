package daubline.intake.raw;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.xssf.usermodel.XSSFCell;

/** Reads one cell of a workbook: the value it holds or, for a formula, the value that was last worked out. */
final class CellReader {

  private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("yyyy-MM-dd", Locale.ROOT);
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
  private static final DateTimeFormatter BOTH = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm:ss", Locale.ROOT);

  private CellReader() {
  }

  static RawCell read(XSSFCell cell) {
    boolean formula = cell.getCellType() == CellType.FORMULA;
    if (formula && !cell.getCTCell().isSetV()) {
      return new RawCell("formula without a value", RawCell.Form.ERROR);
    }
    return switch (formula ? cell.getCachedFormulaResultType() : cell.getCellType()) {
      case STRING -> RawCell.text(cell.getStringCellValue());
      case NUMERIC -> number(cell);
      case BOOLEAN -> RawCell.text(cell.getBooleanCellValue() ? "yes" : "no");
      case ERROR -> new RawCell(error(cell.getErrorCellValue()), RawCell.Form.ERROR);
      default -> RawCell.EMPTY;
    };
  }

  private static RawCell number(XSSFCell cell) {
    double value = cell.getNumericCellValue();
    if (DateUtil.isCellDateFormatted(cell) && DateUtil.isValidExcelDate(value)) {
      return new RawCell(date(cell, value), RawCell.Form.DATE);
    }
    String format = cell.getCellStyle().getDataFormatString();
    return format != null && format.contains("%") ? RawCell.percent(value) : RawCell.number(value);
  }

  private static String date(XSSFCell cell, double value) {
    LocalDateTime time = cell.getLocalDateTimeCellValue();
    if (value < 1) {
      return TIME.format(time);
    }
    return time.toLocalTime().toSecondOfDay() == 0 ? DATE.format(time) : BOTH.format(time);
  }

  private static String error(byte code) {
    return FormulaError.isValidCode(code) ? FormulaError.forInt(code).getString() : "error";
  }
}
