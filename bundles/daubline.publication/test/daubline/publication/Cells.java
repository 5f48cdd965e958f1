package daubline.publication;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Cells as lines of text, sorted, so that two readers can be compared. */
final class Cells {

  private static final String NUMBER = " number ";

  private Cells() {
  }

  /** All cells of a workbook that hold something. */
  static List<String> of(Path workbook) throws Exception {
    List<String> lines = new ArrayList<>();
    try (InputStream in = Files.newInputStream(workbook); XSSFWorkbook book = new XSSFWorkbook(in)) {
      for (Sheet sheet : book) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            line(sheet.getSheetName(), cell).ifPresent(lines::add);
          }
        }
      }
    }
    lines.sort(null);
    return lines;
  }

  private static java.util.Optional<String> line(String sheet, Cell cell) {
    return switch (cell.getCellType()) {
      case NUMERIC -> java.util.Optional.of(number(sheet, cell.getRowIndex(), cell.getColumnIndex(), cell.getNumericCellValue()));
      case STRING -> cell.getStringCellValue().isEmpty() ? java.util.Optional.empty()
          : java.util.Optional.of(text(sheet, cell.getRowIndex(), cell.getColumnIndex(), cell.getStringCellValue()));
      case BLANK -> java.util.Optional.empty();
      default -> throw new AssertionError("a " + (cell.getCellType() == CellType.FORMULA ? "formula" : cell.getCellType()) + " stands in " + sheet + " "
          + cell.getAddress());
    };
  }

  /** A cell with a number. */
  static String number(String table, int row, int column, double value) {
    return table + " " + row + " " + column + NUMBER + value;
  }

  /** Whether two lines say the same, numbers to a part in 10¹²: spreadsheets write fifteen digits, the last of them rounded. */
  static boolean isAlike(String a, String b) {
    int at = a.indexOf(NUMBER);
    if (a.equals(b) || at < 0 || !b.startsWith(a.substring(0, at + NUMBER.length()))) {
      return a.equals(b);
    }
    double first = Double.parseDouble(a.substring(at + NUMBER.length()));
    return Math.abs(first - Double.parseDouble(b.substring(at + NUMBER.length()))) <= 1e-12 * Math.abs(first);
  }

  static String text(String table, int row, int column, String value) {
    return table + " " + row + " " + column + " text " + value.replace("\r\n", "\n").replace("\n", "⏎").replace("\r", "⏎");
  }

  /** The lines that a script printed. */
  static List<String> printed(String output) {
    return Arrays.stream(output.split("\n")).filter(l -> !l.isEmpty()).map(l -> {
      String[] part = l.split("\t", -1);
      int row = Integer.parseInt(part[1]);
      int column = Integer.parseInt(part[2]);
      return part[3].equals("n") ? number(text(part[0]), row, column, Double.parseDouble(part[4])) : text(text(part[0]), row, column, text(part[4]));
    }).sorted().toList();
  }

  private static String text(String hex) {
    return new String(HexFormat.of().parseHex(hex), StandardCharsets.UTF_8);
  }
}
