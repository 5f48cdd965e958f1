package daubline.ui.grid;

import daubline.base.DecimalSign;
import daubline.base.Numbers;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.ui.prefs.Preferred;
import java.text.Collator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * By what a cell is put in order: numbers first, by their size whatever unit stands behind them, then texts by the
 * alphabet of the language, empty cells last.
 *
 * @param number the number that the text begins with, in the canonical unit; NaN for none
 * @param text the text
 */
record SortKey(double number, String text) implements Comparable<SortKey> {

  private static final Pattern BEGINNING = Pattern.compile("[≥≤<>~≈(\\s]*([-\u2212\u2013]?\\d+(?:[.,]\\d+)?(?:[eE][+-]?\\d+)?)(.*)", Pattern.DOTALL);
  private static final Pattern DATE_OR_NAME = Pattern.compile("\\d+[-.:/]\\d+[-.:/].*|\\d+:\\d+.*");
  private static final Pattern BEFORE_UNIT = Pattern.compile("^.*[\\d)]\\s*", Pattern.DOTALL);
  private static final Collator ALPHABET = Collator.getInstance();

  /** The key of a text. */
  static SortKey of(String text) {
    return DATE_OR_NAME.matcher(text).matches() ? new SortKey(Double.NaN, Preferred.dates().keep(text)) : of(text, Preferred.decimal());
  }

  static SortKey of(String text, DecimalSign decimal) {
    Matcher m = BEGINNING.matcher(text);
    if (!m.matches()) {
      return new SortKey(Double.NaN, text);
    }
    String behind = BEFORE_UNIT.matcher(m.group(2)).replaceFirst("").strip();
    List<Unit> units = Units.named(behind);
    Optional<Double> number = Numbers.parse(m.group(1), decimal).filter(n -> behind.isEmpty() || !units.isEmpty());
    return new SortKey(number.map(n -> units.isEmpty() ? n : units.get(0).toCanonical(n)).orElse(Double.NaN), text);
  }

  private int rank() {
    return text.isBlank() ? 2 : Double.isNaN(number) ? 1 : 0;
  }

  @Override
  public int compareTo(SortKey other) {
    int byRank = Integer.compare(rank(), other.rank());
    int bySize = byRank != 0 || Double.isNaN(number) ? byRank : Double.compare(number, other.number);
    return bySize != 0 ? bySize : ALPHABET.compare(text, other.text);
  }
}
