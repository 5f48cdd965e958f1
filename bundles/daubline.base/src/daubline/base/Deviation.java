package daubline.base;

import java.util.List;
import java.util.Optional;

/** How far a value is from what was planned. A plan is taken as exact: it says what was wanted, not what was measured. */
public final class Deviation {

  private Deviation() {
  }

  /**
   * The value less the plan, in canonical differences, with the uncertainty of the value. Inside a planned range the
   * deviation is zero, outside it counts from the nearer end; a plan of "at least" or "at most" is a range open on one side.
   *
   * @return empty when either is no number, or the value is itself only a limit
   */
  public static Optional<Amount> of(Amount planned, Amount actual) {
    if (!planned.isNumber() || planned.kind() == ValueKind.BELOW_LIMIT) {
      return Optional.empty();
    }
    return switch (actual.kind()) {
      case EXACT -> Optional.of(Amount.exact(from(planned, actual.value())));
      case PLUS_MINUS -> Optional.of(Amount.plusMinus(from(planned, actual.value()), actual.sigma()));
      case RANGE -> Optional.of(Amount.range(from(planned, actual.low()), from(planned, actual.high())));
      default -> Optional.empty();
    };
  }

  private static double from(Amount planned, double value) {
    boolean point = planned.kind() == ValueKind.EXACT || planned.kind() == ValueKind.PLUS_MINUS;
    double low = point ? planned.value() : planned.low();
    double high = point ? planned.value() : planned.high();
    // comparisons with an open end (NaN) are false
    return value < low ? value - low : value > high ? value - high : 0;
  }

  /** A deviation with its sign in a unit, such as "-23 ± 3 mm" or "+5 mm". */
  public static String printed(Amount deviation, Unit unit) {
    Unit difference = new Unit(unit.symbol(), unit.quantity(), unit.factor(), 0, List.of());
    String text = Printed.withUnit(deviation, difference);
    return deviation.kind() != ValueKind.RANGE && deviation.value() > 0 ? "+" + text : text;
  }
}
