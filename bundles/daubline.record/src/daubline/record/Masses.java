package daubline.record;

import daubline.base.Amount;
import daubline.base.HowGot;
import daubline.base.Quantity;
import daubline.base.Units;
import daubline.base.ValueKind;
import daubline.base.ValueType;
import daubline.base.Variable;
import daubline.model.Reading;
import daubline.session.Readings;
import java.util.List;
import java.util.Set;

/** Weighed masses of readings that belong to no variable of the catalogue, such as a sieve band. */
final class Masses {

  private Masses() {
  }

  /** What such a mass is read as; it stands in no catalogue. */
  static Variable of(String id, String name) {
    return of(id, name, Quantity.MASS);
  }

  /** The same of another quantity. */
  static Variable of(String id, String name, Quantity quantity) {
    return new Variable(id, name, "", ValueType.NUMBER, quantity, Units.canonical(quantity), 0, Double.NaN, Set.of(), List.of(), false, "", "", "");
  }

  /** Masses are weighed and volumes measured; bare parts are neither. */
  private static HowGot how(Quantity quantity) {
    return switch (quantity) {
      case MASS -> HowGot.WEIGHED;
      case VOLUME -> HowGot.MEASURED;
      default -> null;
    };
  }

  /** Reads a mass into the reading of a row. */
  static <R extends Reading> Entry<R> read(Desk desk, Variable mass, String typed) {
    return Columns.value(desk, mass, typed, (reading, change) -> {
      if (change == null) {
        Readings.put(reading, Amount.of(ValueKind.NOT_RECORDED));
        reading.setKind(null);
      } else {
        change.accept(reading);
        reading.setVariable(null);
        reading.setHow(how(mass.quantity()));
      }
    });
  }
}
