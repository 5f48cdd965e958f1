package daubline.base;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;

/**
 * Flags values outside a variable's plausible range and says which slip would explain them: another unit or a factor of
 * ten. Nothing is corrected.
 */
public final class Plausibility {

  private static final Set<Quantity> MAY_BE_NEGATIVE = EnumSet.of(Quantity.NUMBER, Quantity.TEMPERATURE, Quantity.PRESSURE, Quantity.ANGLE);

  private Plausibility() {
  }

  /**
   * Checks one value. A limit is odd only when nothing on its open side is plausible; a range is odd when one of its
   * ends is.
   *
   * @param variable the variable with its plausible range
   * @param amount the value read
   * @param typedIn the unit it was typed in
   * @return a warning, an error for a negative value that cannot be, or empty when nothing is odd
   */
  public static Optional<Finding> check(Variable variable, Amount amount, Unit typedIn) {
    if (!amount.isNumber()) {
      return Optional.empty();
    }
    if (isImpossible(variable, amount)) {
      return Optional.of(Finding.error("value.negative", "", variable.name() + " is negative", "enter it without a minus sign")
          .about("", variable.id()));
    }
    if (isPlausible(variable, amount, v -> v)) {
      return Optional.empty();
    }
    String what = variable.name() + " " + Printed.withUnit(amount, typedIn) + " is outside " + range(variable, typedIn);
    return Optional.of(Finding.warning("value.implausible", "", what, remedy(variable, amount, typedIn)).about("", variable.id()));
  }

  private static boolean isImpossible(Variable variable, Amount amount) {
    boolean negative = amount.value() < 0 || amount.low() < 0;
    return negative && !MAY_BE_NEGATIVE.contains(variable.quantity()) && !(variable.plausibleLow() < 0);
  }

  private static boolean isPlausible(Variable variable, Amount amount, DoubleUnaryOperator meant) {
    return switch (amount.kind()) {
      case AT_LEAST -> !(meant.applyAsDouble(amount.value()) > variable.plausibleHigh());
      case AT_MOST, BELOW_LIMIT -> !(meant.applyAsDouble(amount.value()) < variable.plausibleLow());
      case RANGE -> variable.isPlausible(meant.applyAsDouble(amount.low())) && variable.isPlausible(meant.applyAsDouble(amount.high()));
      default -> variable.isPlausible(meant.applyAsDouble(amount.value()));
    };
  }

  private static String range(Variable variable, Unit unit) {
    String low = Printed.number(unit.fromCanonical(variable.plausibleLow()));
    String high = Printed.number(unit.fromCanonical(variable.plausibleHigh()));
    String symbol = unit.symbol().isEmpty() ? "" : "\u00A0" + unit.symbol();
    if (Double.isNaN(variable.plausibleLow())) {
      return "up to " + high + symbol;
    }
    return Double.isNaN(variable.plausibleHigh()) ? low + symbol + " or more" : low + " to " + high + symbol;
  }

  /**
   * The other units in which the number typed would be plausible, the order of the pick-lists.
   *
   * @param amount the value as it was read, in the canonical unit
   * @param typedIn the unit it was typed in
   */
  public static List<Unit> meant(Variable variable, Amount amount, Unit typedIn) {
    return Units.of(variable.quantity()).stream()
        .filter(unit -> !unit.equals(typedIn) && isPlausible(variable, amount, v -> unit.toCanonical(typedIn.fromCanonical(v)))).toList();
  }

  private static String remedy(Variable variable, Amount amount, Unit typedIn) {
    for (Unit unit : meant(variable, amount, typedIn)) {
      return "was it in " + (unit.symbol().isEmpty() ? "parts of one" : unit.symbol()) + "? Change the unit, or leave it if it is right";
    }
    for (double factor : new double[] {0.1, 10}) {
      if (isPlausible(variable, amount, v -> typedIn.toCanonical(factor * typedIn.fromCanonical(v)))) {
        String meant = Printed.number(factor * typedIn.fromCanonical(amount.value()));
        return "a decimal sign may have slipped (" + meant + "?); leave it if it is right";
      }
    }
    return "check the value against its source; leave it if it is right";
  }
}
