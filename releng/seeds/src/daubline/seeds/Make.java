package daubline.seeds;

import daubline.base.Amount;
import daubline.base.AmountReader;
import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.base.Quantity;
import daubline.base.Printed;
import daubline.base.Typed;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.model.Identified;
import daubline.model.ModelFactory;
import daubline.model.Reading;
import daubline.session.Readings;
import java.util.List;
import java.util.Optional;

/** Makes values from text as a person would type it; a text that cannot be read stops the generator. */
final class Make {

  static final ModelFactory NEW = ModelFactory.eINSTANCE;
  private static final AmountReader READER = new AmountReader(DecimalSign.POINT);

  private Make() {
  }

  /** Puts a typed value of a variable of the catalogue into a reading. */
  static <T extends Reading> T value(T reading, String variable, String typed, String unit) {
    return value(reading, Variables.standard().get(variable), typed, unit);
  }

  /** Puts a typed value of a variable into a reading. */
  static <T extends Reading> T value(T reading, Variable variable, String typed, String unit) {
    Optional<Finding> wrong = Readings.put(reading, variable, typed, unit, DecimalSign.POINT);
    wrong.ifPresent(finding -> {
      throw new IllegalArgumentException(variable.id() + ": " + finding);
    });
    return reading;
  }

  /** The one with an id. */
  static <T extends Identified> T find(List<T> all, String id) {
    return all.stream().filter(o -> id.equals(o.getId())).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("Nothing is called “" + id + "”"));
  }

  /** A value with its standard uncertainty as somebody would type it. */
  static String plusMinus(double value, double sigma, int decimals) {
    return Printed.fixed(value, decimals) + " ± " + Printed.fixed(sigma, decimals);
  }

  /** Puts a typed mass into a reading that belongs to no variable. */
  static <T extends Reading> T mass(T reading, String typed, String unit) {
    return plain(reading, Quantity.MASS, typed, unit);
  }

  /** Puts a typed share in per cent into a reading that belongs to no variable. */
  static <T extends Reading> T percent(T reading, String typed) {
    return plain(reading, Quantity.FRACTION, typed, "%");
  }

  private static <T extends Reading> T plain(T reading, Quantity quantity, String typed, String symbol) {
    Unit unit = Units.find(quantity, symbol).orElseThrow();
    Typed read = READER.number(typed, unit);
    if (!read.isRead()) {
      throw new IllegalArgumentException(read.finding().toString());
    }
    Amount amount = read.amount();
    Readings.put(reading, amount);
    reading.setTyped(typed);
    reading.setUnit(amount.isNumber() ? unit.symbol() : null);
    return reading;
  }
}
