package daubline.base;

import java.util.Optional;

/**
 * Flags values outside a variable's plausible range and says which slip would explain them: another unit or a factor of
 * ten. Nothing is corrected.
 */
public final class Plausibility {

  private Plausibility() {
  }

  /**
   * Checks one value.
   *
   * @param variable the variable with its plausible range
   * @param amount the value read
   * @param typedIn the unit it was typed in
   * @return a warning, or empty when nothing is odd
   */
  public static Optional<Finding> check(Variable variable, Amount amount, Unit typedIn) {
    if (!amount.isNumber() || variable.isPlausible(amount.value())) {
      return impossible(variable, amount);
    }
    double entered = typedIn.fromCanonical(amount.value());
    String range = Printed.number(typedIn.fromCanonical(variable.plausibleLow())) + " to "
        + Printed.number(typedIn.fromCanonical(variable.plausibleHigh()));
    String what = variable.name() + " " + Printed.number(entered) + " " + typedIn.symbol() + " is outside " + range + " "
        + typedIn.symbol();
    return Optional.of(Finding.warning("value.implausible", "", what.strip(), remedy(variable, entered, typedIn))
        .about("", variable.id()));
  }

  private static Optional<Finding> impossible(Variable variable, Amount amount) {
    boolean negative = amount.isNumber() && amount.value() < 0
        && (variable.quantity() == Quantity.MASS || variable.quantity() == Quantity.TIME || variable.quantity() == Quantity.FRACTION);
    return negative ? Optional.of(Finding.error("value.negative", "", variable.name() + " is negative", "enter it without a minus sign")
        .about("", variable.id())) : Optional.empty();
  }

  private static String remedy(Variable variable, double entered, Unit typedIn) {
    for (Unit unit : Units.of(variable.quantity())) {
      if (!unit.equals(typedIn) && variable.isPlausible(unit.toCanonical(entered))) {
        return "was it typed in " + unit.symbol() + "? Change the unit, or leave it if it is right";
      }
    }
    for (double factor : new double[] {0.1, 10}) {
      if (variable.isPlausible(typedIn.toCanonical(entered * factor))) {
        return "a decimal sign may have slipped (" + Printed.number(entered * factor) + "?); leave it if it is right";
      }
    }
    return "check the value against its source; leave it if it is right";
  }
}
