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
 * @param text what is printed
 * @param number the number in the column's unit, unrounded, NaN when the cell holds none
 * @param kind exact for plain numbers, text for words, otherwise what kind of statement or missing value it is
 * @param trail where it came from; null when it has no origin of its own, such as a heading or a count
 */
public record Cell(String text, double number, ValueKind kind, Trail trail) {

  /** A cell without content. */
  public static final Cell EMPTY = new Cell("", Double.NaN, ValueKind.TEXT, null);

  public Cell {
    Objects.requireNonNull(text);
    Objects.requireNonNull(kind);
  }

  /** A cell of words. */
  public static Cell text(String text) {
    return text == null || text.isEmpty() ? EMPTY : new Cell(text, Double.NaN, ValueKind.TEXT, null);
  }

  /** A number with fixed decimals; an en dash when there is none. */
  public static Cell fixed(double number, int decimals) {
    return Double.isNaN(number) ? new Cell("–", number, ValueKind.NOT_RECORDED, null)
        : new Cell(Printed.fixed(number, decimals), number, ValueKind.EXACT, null);
  }

  /** An amount in the column's unit. */
  public static Cell amount(Amount amount, Unit unit, Trail trail) {
    return new Cell(Printed.amount(amount, unit), amount.isNumber() ? unit.fromCanonical(amount.value()) : Double.NaN, amount.kind(), trail);
  }

  /** The same with its origin. */
  public Cell from(Trail origin) {
    return new Cell(text, number, kind, origin);
  }

  /** Whether it holds a plain number, which a spreadsheet may reckon with. */
  public boolean isPlainNumber() {
    return !Double.isNaN(number) && (kind == ValueKind.EXACT);
  }
}
