package daubline.intake.raw;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * One cell as it stands in a file.
 *
 * @param text what it holds; a number of a workbook with a point and without grouping, a date in ISO form
 * @param form what the file itself says it is
 */
public record RawCell(String text, Form form) {

  /** What the file says a cell is; a CSV file only knows text. */
  public enum Form {
    /** Text, or any cell of a CSV file. */
    TEXT,
    /** A number of a workbook; its decimal sign is a point whatever the file's. */
    NUMBER,
    /** A number of a workbook that it shows as a percentage; the text is the number of per cent. */
    PERCENT,
    /** A number of a workbook that it shows as a date, a time or both. */
    DATE,
    /** An error such as #DIV/0!, or a formula that was never calculated. */
    ERROR
  }

  private static final MathContext DIGITS = new MathContext(15);

  /** The cell that is not there. */
  public static final RawCell EMPTY = new RawCell("", Form.TEXT);

  /** Text without the spaces around it. */
  public static RawCell text(String text) {
    return text.isBlank() ? EMPTY : new RawCell(strip(text), Form.TEXT);
  }

  /** A number of a workbook, to the fifteen digits that workbooks keep. */
  public static RawCell number(double value) {
    return new RawCell(plain(value), Form.NUMBER);
  }

  /** A share that a workbook shows in per cent. */
  public static RawCell percent(double share) {
    return new RawCell(plain(share * 100), Form.PERCENT);
  }

  private static String plain(double value) {
    BigDecimal rounded = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
    boolean shortEnough = rounded.signum() == 0 || Math.abs(rounded.precision() - rounded.scale()) < 16;
    return shortEnough ? rounded.toPlainString() : rounded.toString();
  }

  /** Spaces of every kind at the ends, the no-break space of copied tables among them, say nothing. */
  private static String strip(String text) {
    int from = 0;
    int until = text.length();
    while (from < until && isSpace(text.charAt(from))) {
      from++;
    }
    while (until > from && isSpace(text.charAt(until - 1))) {
      until--;
    }
    return text.substring(from, until);
  }

  private static boolean isSpace(char c) {
    return Character.isWhitespace(c) || c == '\u00A0' || c == '\u202F' || c == '\uFEFF';
  }

  /** Whether nothing stands in it. */
  public boolean isEmpty() {
    return text.isEmpty();
  }

  /** Whether the file says it is a number. */
  public boolean isNumber() {
    return form == Form.NUMBER || form == Form.PERCENT;
  }
}
