package daubline.criteria;

import daubline.base.Amount;

/**
 * A number as an interval: low and high are equal for a value, infinite where open.
 *
 * @param low lower bound
 * @param high upper bound
 * @param sigma standard uncertainty, 0 when none is stated
 */
record Interval(double low, double high, double sigma) {

  static Interval of(Amount amount) {
    double sigma = amount.sigmaOr(0);
    return switch (amount.kind()) {
      case RANGE -> new Interval(amount.low(), amount.high(), sigma);
      case AT_LEAST -> new Interval(amount.low(), Double.POSITIVE_INFINITY, sigma);
      case AT_MOST, BELOW_LIMIT -> new Interval(Double.NEGATIVE_INFINITY, amount.high(), sigma);
      default -> new Interval(amount.value(), amount.value(), sigma);
    };
  }

  /** The same on a logarithmic scale, where uncertainties are relative. */
  Interval log() {
    double reference = Double.isInfinite(low) ? high : Double.isInfinite(high) ? low : (low + high) / 2;
    return new Interval(low > 0 ? Math.log(low) : Double.NEGATIVE_INFINITY, Math.log(high), sigma / reference);
  }

  boolean isLimit() {
    return Double.isInfinite(low) || Double.isInfinite(high);
  }

  /** The bound that is not open, or the middle. */
  double centre() {
    return Double.isInfinite(low) ? high : Double.isInfinite(high) ? low : (low + high) / 2;
  }

  double half() {
    return isLimit() ? 0 : (high - low) / 2;
  }

  /** Whether a limit leaves open on which side of the other interval the value lies. */
  boolean isUndecidedAgainst(Interval other) {
    boolean inside = low >= other.low && high <= other.high;
    boolean apart = low > other.high || high < other.low;
    return isLimit() && !inside && !apart;
  }
}
