package daubline.export;

import daubline.base.Amount;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.base.Unit;
import daubline.base.ValueKind;
import java.util.Objects;

/**
 * One cell of a table.
 *
 * @param text what is printed, with a point as decimal sign and an ASCII hyphen as minus; a {@link Style} refines it
 * @param number the number in the column's unit, unrounded, NaN when the cell holds none
 * @param sigma one standard uncertainty in the column's unit, NaN when none is stated
 * @param kind exact for plain numbers, text for words, otherwise what kind of statement or missing value it is
 * @param trail where it came from; null when it has no origin of its own, such as a heading or a count
 * @param note the number of the table's footnote that belongs to it, from 1; 0 for none
 */
public record Cell(String text, double number, double sigma, ValueKind kind, Trail trail, int note) {

  /** A cell without content. */
  public static final Cell EMPTY = new Cell("", Double.NaN, ValueKind.TEXT, null);

  public Cell {
    Objects.requireNonNull(text);
    Objects.requireNonNull(kind);
    if (note < 0) {
      throw new IllegalArgumentException("Footnotes count from 1, not " + note);
    }
  }

  /** A cell without uncertainty and footnote. */
  public Cell(String text, double number, ValueKind kind, Trail trail) {
    this(text, number, Double.NaN, kind, trail, 0);
  }

  /** A cell of words. */
  public static Cell text(String text) {
    return text == null || text.isEmpty() ? EMPTY : new Cell(text, Double.NaN, ValueKind.TEXT, null);
  }

  /** A number with fixed decimals; not recorded when there is none. */
  public static Cell fixed(double number, int decimals) {
    return Double.isNaN(number) ? missing(ValueKind.NOT_RECORDED) : new Cell(Printed.fixed(number, decimals), number, ValueKind.EXACT, null);
  }

  /** A number to four significant digits; not recorded when there is none. */
  public static Cell number(double number) {
    return Double.isNaN(number) ? missing(ValueKind.NOT_RECORDED) : new Cell(Printed.number(number), number, ValueKind.EXACT, null);
  }

  /** A value with its standard uncertainty, both rounded to the place that the uncertainty asks for. */
  public static Cell plusMinus(double number, double sigma) {
    return Double.isNaN(number) || !(sigma > 0) ? number(number)
        : new Cell(Printed.plusMinus(number, sigma), number, sigma, ValueKind.PLUS_MINUS, null, 0);
  }

  /** A reason why there is no value. */
  public static Cell missing(ValueKind reason) {
    return new Cell(reason.word(), Double.NaN, reason, null);
  }

  /** An amount in the column's unit. */
  public static Cell amount(Amount amount, Unit unit, Trail trail) {
    return new Cell(Printed.amount(amount, unit), amount.isNumber() ? unit.fromCanonical(amount.value()) : Double.NaN,
        amount.kind() == ValueKind.PLUS_MINUS ? unit.differenceFromCanonical(amount.sigma()) : Double.NaN, amount.kind(), trail, 0);
  }

  /** The same with its origin. */
  public Cell from(Trail origin) {
    return new Cell(text, number, sigma, kind, origin, note);
  }

  /** The same with a footnote, counted from 1. */
  public Cell noted(int footnote) {
    return new Cell(text, number, sigma, kind, trail, footnote);
  }

  /** The same with other text. */
  public Cell reading(String otherText) {
    return new Cell(otherText, number, sigma, kind, trail, note);
  }

  /** Whether it holds a plain number, which a spreadsheet may reckon with. */
  public boolean isPlainNumber() {
    return Double.isFinite(number) && (kind == ValueKind.EXACT || kind == ValueKind.PLUS_MINUS);
  }

  /** The decimals that are printed; 0 for whole numbers and for words. */
  public int decimals() {
    int point = text.indexOf('.');
    int end = point + 1;
    while (point >= 0 && end < text.length() && Character.isDigit(text.charAt(end))) {
      end++;
    }
    return point < 0 ? 0 : end - point - 1;
  }
}
