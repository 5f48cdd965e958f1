package daubline.base;

import java.util.List;

/**
 * A unit of entry and display: canonical = entered × factor + offset.
 *
 * @param symbol what is printed
 * @param quantity what it measures
 * @param factor canonical units in one of it, greater than zero
 * @param offset canonical value of its zero (temperatures only)
 * @param spellings other ways to type it
 */
public record Unit(String symbol, Quantity quantity, double factor, double offset, List<String> spellings) {

  public Unit {
    if (!(factor > 0)) {
      throw new IllegalArgumentException("A unit needs a positive factor: " + symbol);
    }
    spellings = List.copyOf(spellings);
  }

  /** A value in this unit as canonical value. */
  public double toCanonical(double entered) {
    return entered * factor + offset;
  }

  /** A canonical value in this unit. */
  public double fromCanonical(double canonical) {
    return (canonical - offset) / factor;
  }

  /** A difference or an uncertainty in this unit as canonical difference. */
  public double differenceToCanonical(double entered) {
    return entered * factor;
  }

  /** A canonical difference or uncertainty in this unit. */
  public double differenceFromCanonical(double canonical) {
    return canonical / factor;
  }
}
