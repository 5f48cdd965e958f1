package daubline.export.format;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.ss.usermodel.Workbook;

/** The cell styles of one workbook, each made once. */
final class WorkbookStyles {

  private static final int MOST_DECIMALS = 10;

  private final Workbook book;
  private final Map<String, CellStyle> numbers = new HashMap<>();
  /** Styles of numbers without a footnote by their decimals, found without making the text of their format. */
  private final CellStyle[] plain = new CellStyle[MOST_DECIMALS + 1];
  private final CellStyle header;
  private final CellStyle numberHeader;
  private final CellStyle text;
  private final CellStyle quoted;
  private final CellStyle right;
  private final CellStyle link;

  WorkbookStyles(Workbook book) {
    this.book = book;
    header = headerStyle(HorizontalAlignment.LEFT);
    numberHeader = headerStyle(HorizontalAlignment.RIGHT);
    text = textStyle(false);
    quoted = textStyle(true);
    right = textStyle(false);
    right.setAlignment(HorizontalAlignment.RIGHT);
    link = textStyle(false);
    Font underlined = book.createFont();
    underlined.setUnderline(Font.U_SINGLE);
    link.setFont(underlined);
  }

  private CellStyle headerStyle(HorizontalAlignment alignment) {
    CellStyle style = textStyle(false);
    style.setAlignment(alignment);
    Font bold = book.createFont();
    bold.setBold(true);
    style.setFont(bold);
    style.setBorderBottom(BorderStyle.THIN);
    return style;
  }

  private CellStyle textStyle(boolean isQuoted) {
    CellStyle style = book.createCellStyle();
    style.setDataFormat(book.createDataFormat().getFormat("@"));
    style.setWrapText(true);
    style.setVerticalAlignment(VerticalAlignment.TOP);
    style.setQuotePrefixed(isQuoted);
    return style;
  }

  CellStyle header(boolean ofNumbers) {
    return ofNumbers ? numberHeader : header;
  }

  CellStyle link() {
    return link;
  }

  /** For text of a column: aligned as numbers where the column holds numbers, marked where it could become a formula. */
  CellStyle text(String content, boolean amongNumbers) {
    return Guard.isNeeded(content) ? quoted : amongNumbers ? right : text;
  }

  /** For a number with decimals and, where it has one, the mark of its footnote after it. */
  CellStyle number(int decimals, int note) {
    int shown = Math.min(decimals, MOST_DECIMALS);
    if (note == 0 && plain[shown] != null) {
      return plain[shown];
    }
    CellStyle style = noted(shown, note);
    if (note == 0) {
      plain[shown] = style;
    }
    return style;
  }

  private CellStyle noted(int shown, int note) {
    String format = "0" + (shown > 0 ? "." + "0".repeat(shown) : "") + (note > 0 ? "\" [" + note + "]\"" : "");
    return numbers.computeIfAbsent(format, f -> {
      CellStyle style = book.createCellStyle();
      style.setDataFormat(book.createDataFormat().getFormat(f));
      style.setVerticalAlignment(VerticalAlignment.TOP);
      return style;
    });
  }
}
