package daubline.base;

import java.util.Objects;

/**
 * One value in canonical units with its uncertainty, or the reason why there is none.
 *
 * @param kind what kind of statement it is
 * @param value the number; for a range its midpoint, for a limit the limit; NaN when the kind has no number
 * @param low lower bound of a range or of at least, NaN when open
 * @param high upper bound of a range, of at most or of below limit, NaN when open
 * @param sigma one standard uncertainty, NaN when not stated
 * @param category the word of a category or the text, empty otherwise; for probabilities "word:0.7; word:0.3"
 */
public record Amount(ValueKind kind, double value, double low, double high, double sigma, String category) {

  public Amount {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(category);
    if (sigma < 0) {
      throw new IllegalArgumentException("An uncertainty cannot be negative: " + sigma);
    }
    if (low > high) {
      throw new IllegalArgumentException("The lower bound " + low + " is above the upper bound " + high);
    }
  }

  /** A number without stated uncertainty. */
  public static Amount exact(double value) {
    return new Amount(ValueKind.EXACT, value, Double.NaN, Double.NaN, Double.NaN, "");
  }

  /** A number with one standard uncertainty. */
  public static Amount plusMinus(double value, double sigma) {
    return new Amount(ValueKind.PLUS_MINUS, value, Double.NaN, Double.NaN, sigma, "");
  }

  /** Between two bounds. */
  public static Amount range(double low, double high) {
    return new Amount(ValueKind.RANGE, (low + high) / 2, low, high, Double.NaN, "");
  }

  /** This or more. */
  public static Amount atLeast(double low) {
    return new Amount(ValueKind.AT_LEAST, low, low, Double.NaN, Double.NaN, "");
  }

  /** This or less. */
  public static Amount atMost(double high) {
    return new Amount(ValueKind.AT_MOST, high, Double.NaN, high, Double.NaN, "");
  }

  /** Below a known limit of detection. */
  public static Amount belowLimit(double limit) {
    return new Amount(ValueKind.BELOW_LIMIT, limit, Double.NaN, limit, Double.NaN, "");
  }

  /** One of a variable's words. */
  public static Amount category(String word) {
    return new Amount(ValueKind.CATEGORY, Double.NaN, Double.NaN, Double.NaN, Double.NaN, word);
  }

  /** Free text. */
  public static Amount text(String text) {
    return new Amount(ValueKind.TEXT, Double.NaN, Double.NaN, Double.NaN, Double.NaN, text);
  }

  /** A statement without a number: present, absent, or a kind of missing. */
  public static Amount of(ValueKind kind) {
    if (kind.isNumber() || kind == ValueKind.CATEGORY || kind == ValueKind.TEXT) {
      throw new IllegalArgumentException("The kind " + kind + " needs a value");
    }
    return new Amount(kind, Double.NaN, Double.NaN, Double.NaN, Double.NaN, "");
  }

  /** The same with another standard uncertainty. */
  public Amount withSigma(double newSigma) {
    return new Amount(kind, value, low, high, newSigma, category);
  }

  /** Whether it holds a number that can be compared. */
  public boolean isNumber() {
    return kind.isNumber();
  }

  /** Whether its number may be reckoned with as the value itself; a bound may not. */
  public boolean isEstimate() {
    return kind.isEstimate();
  }

  /** Whether it says why nothing is known. */
  public boolean isMissing() {
    return kind.isMissing();
  }

  /** The standard uncertainty, or another one when none is stated. */
  public double sigmaOr(double other) {
    return Double.isNaN(sigma) ? other : sigma;
  }
}
