package daubline.base;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * How numbers are written: the uncertainty to at most two significant digits and the value to the same place (JCGM
 * 100:2008, 7.2.6), half to even, never in scientific notation where a plain number is short enough.
 */
public final class Printed {

  private static final int DIGITS = 4;
  private static final Unit MILLIMETRE = Units.find(Quantity.LENGTH, "mm").orElseThrow();

  private Printed() {
  }

  /** A number to four significant digits, without trailing zeros. */
  public static String number(double value) {
    return number(value, DIGITS);
  }

  /** A number to some significant digits, without trailing zeros; "–" when there is none. */
  public static String number(double value, int digits) {
    if (!Double.isFinite(value)) {
      return Double.isNaN(value) ? "–" : value > 0 ? "∞" : "-∞";
    }
    BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_EVEN)).stripTrailingZeros();
    boolean plain = rounded.signum() == 0 || rounded.precision() - rounded.scale() > -5 && rounded.precision() - rounded.scale() < 10;
    return plain ? rounded.toPlainString() : rounded.toString();
  }

  /** An agreement between 0 and 1 to two significant digits; what is below one in a thousand is said so. */
  public static String agreement(double value) {
    return value < 0.001 ? "below 0.001" : number(value, 2);
  }

  /** A number with fixed decimals. */
  public static String fixed(double value, int decimals) {
    return Double.isFinite(value) ? BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString() : number(value);
  }

  /**
   * The decimals that an uncertainty of two significant digits asks for; negative for tens and hundreds.
   *
   * @param sigma one standard uncertainty, greater than zero
   */
  public static int decimals(double sigma) {
    BigDecimal two = BigDecimal.valueOf(sigma).round(new MathContext(2, RoundingMode.HALF_EVEN));
    return two.scale() - (two.precision() < 2 ? two.precision() - 2 : 0);
  }

  /** Value and uncertainty rounded to the same place, such as "408 ± 26". */
  public static String plusMinus(double value, double sigma) {
    if (!(sigma > 0) || !Double.isFinite(sigma) || !Double.isFinite(value)) {
      return number(value);
    }
    int decimals = decimals(sigma);
    return place(value, decimals) + " ± " + place(sigma, decimals);
  }

  private static String place(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN).setScale(Math.max(0, decimals), RoundingMode.UNNECESSARY)
        .toPlainString();
  }

  /** An amount in a unit, without the unit's symbol. */
  public static String amount(Amount amount, Unit unit) {
    double value = unit.fromCanonical(amount.value());
    return switch (amount.kind()) {
      case PLUS_MINUS -> plusMinus(value, unit.differenceFromCanonical(amount.sigma()));
      case EXACT -> number(value);
      case RANGE -> number(unit.fromCanonical(amount.low())) + "–" + number(unit.fromCanonical(amount.high()));
      case AT_LEAST -> "≥ " + number(value);
      case AT_MOST -> "≤ " + number(value);
      case BELOW_LIMIT -> "< " + number(value);
      case CATEGORY, TEXT -> amount.category();
      default -> amount.kind().word();
    };
  }

  /** An amount in a unit with the unit's symbol after a no-break space where there is a number. */
  public static String withUnit(Amount amount, Unit unit) {
    String text = amount(amount, unit);
    return amount.isNumber() && !unit.symbol().isEmpty() ? text + "\u00A0" + unit.symbol() : text;
  }

  /** A length in metres as millimetres with their unit. */
  public static String millimetres(double metres) {
    return millimetres(metres, DIGITS);
  }

  /** The same to so many significant digits. */
  public static String millimetres(double metres, int digits) {
    return number(MILLIMETRE.fromCanonical(metres), digits) + " " + MILLIMETRE.symbol();
  }
}
