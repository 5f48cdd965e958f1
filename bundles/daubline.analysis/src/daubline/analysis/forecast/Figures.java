package daubline.analysis.forecast;

import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.engine.process.BurnQuantity;
import java.util.Map;
import java.util.Optional;

/** How the figures of a forecast are written: in the units in which people read them. */
public final class Figures {

  private record Shown(Quantity quantity, String symbol) {
  }

  /** The units in which people read each canonical one. */
  private static final Map<String, Shown> SHOWN = Map.of("s", new Shown(Quantity.TIME, "h"), "kg/s", new Shown(Quantity.MASS_FLOW, "kg/h"),
      "m", new Shown(Quantity.LENGTH, "cm"), "m/s", new Shown(Quantity.SPEED, "m/s"),
      "m³/s", new Shown(Quantity.VOLUME_FLOW, "L/min"), "1", new Shown(Quantity.FRACTION, "%"));

  private Figures() {
  }

  /** The unit to print; empty where the engine's own is printed. */
  public static Optional<Unit> unit(BurnQuantity quantity) {
    Shown shown = SHOWN.get(quantity.unit());
    return switch (quantity) {
      case BLAST -> Units.find(Quantity.FLUX, "L/(min·cm²)");
      case TAPS, PEOPLE, PEOPLE_BY_SHIFT -> Optional.empty();
      case RESIDENCE -> Units.find(Quantity.TIME, "min");
      default -> shown == null ? Optional.empty() : Units.find(shown.quantity(), shown.symbol());
    };
  }

  /** Its symbol; empty for a plain number. */
  public static String symbol(BurnQuantity quantity) {
    String own = quantity.unit().equals("1") ? "" : quantity.unit();
    return unit(quantity).map(Unit::symbol).orElse(own);
  }

  /** A value of the engine as a number in the unit to print. */
  public static double number(BurnQuantity quantity, double value) {
    return unit(quantity).map(u -> u.fromCanonical(value)).orElse(value);
  }

  /** A value of the engine to three significant digits in the unit to print, without the symbol; "–" when there is none. */
  public static String text(BurnQuantity quantity, double value) {
    return Printed.number(number(quantity, value), 3);
  }
}
