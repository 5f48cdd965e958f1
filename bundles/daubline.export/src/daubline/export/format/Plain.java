package daubline.export.format;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers for machines: a point, no grouping, fifteen significant digits at most. */
public final class Plain {

  private static final MathContext FIFTEEN = new MathContext(15, RoundingMode.HALF_EVEN);
  /** Fifteen digits and the point; a zero before the point or a sign only make it safer. */
  private static final int MOST_LETTERS = 16;
  private static final long EXACT_WHOLE = 1_000_000_000_000_000L;

  private Plain() {
  }

  /**
   * A finite number as text. Fifteen digits drop what the conversion of units leaves behind, such as the last digit of
   * 0.30000000000000004.
   *
   * @throws NumberFormatException when it is not finite
   */
  public static String number(double value) {
    if (value == Math.rint(value) && Math.abs(value) < EXACT_WHOLE) {
      return Long.toString((long) value);
    }
    String shortest = Double.toString(value);
    if (shortest.length() <= MOST_LETTERS && shortest.indexOf('E') < 0) {
      // fifteen digits at most, so there is nothing to round; most numbers end here, ten times faster
      return shortest;
    }
    BigDecimal rounded = new BigDecimal(shortest).round(FIFTEEN).stripTrailingZeros();
    int magnitude = rounded.precision() - rounded.scale();
    return magnitude > -6 && magnitude < 22 ? rounded.toPlainString() : rounded.toString();
  }
}
