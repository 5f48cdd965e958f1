package daubline.base;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The units that may be typed. Factors: BIPM, The International System of Units (SI Brochure), 9th edition 2019, and for
 * the inch, pound and their derivatives the exact international definitions (yard and pound agreement of 1959);
 * conventional millimetre and inch of water with 1000 kg/m³ and standard gravity 9.80665 m/s².
 */
public final class Units {

  private static final double INCH = 0.0254;
  private static final double POUND = 0.45359237;
  private static final double FOOT3 = Math.pow(12 * INCH, 3);
  private static final double GRAVITY = 9.80665;

  /** The ice point in kelvin (SI Brochure, 9th edition, 2.3.1: t/°C = T/K - 273.15). */
  public static final double ZERO_CELSIUS = 273.15;

  private static final List<Unit> ALL = List.of(
      unit("", Quantity.NUMBER, 1, "1", "-", "count", "number", "ratio"),
      unit("", Quantity.FRACTION, 1, "1", "fraction", "kg/kg"),
      unit("%", Quantity.FRACTION, 1e-2, "percent", "per cent", "pct", "wt%", "wt.%", "wt %", "mass%", "% m/m", "wt.-%", "wt-%", "wt. %", "weight %",
          "mass %", "mass-%", "m/m %", "Gew.-%", "Gew.%", "Gew-%", "Gew%", "Ma.-%", "Ma.%", "Ma-%", "M.-%", "Masse-%"),
      unit("mg/kg", Quantity.FRACTION, 1e-6, "ppm", "µg/g", "μg/g", "ug/g", "g/t", "ppmw"),
      unit("g/kg", Quantity.FRACTION, 1e-3, "‰"),
      unit("mm", Quantity.LENGTH, 1e-3), unit("cm", Quantity.LENGTH, 1e-2), unit("m", Quantity.LENGTH, 1),
      unit("in", Quantity.LENGTH, INCH, "inch", "inches", "\""), unit("ft", Quantity.LENGTH, 12 * INCH, "foot", "feet"),
      unit("µm", Quantity.LENGTH, 1e-6, "um", "micron"),
      unit("mm²", Quantity.AREA, 1e-6, "mm2"), unit("cm²", Quantity.AREA, 1e-4, "cm2"), unit("m²", Quantity.AREA, 1, "m2"),
      unit("L", Quantity.VOLUME, 1e-3, "l", "litre", "liter", "dm³", "dm3"), unit("m³", Quantity.VOLUME, 1, "m3"),
      unit("mL", Quantity.VOLUME, 1e-6, "ml", "cm³", "cm3", "cc"), unit("in³", Quantity.VOLUME, Math.pow(INCH, 3), "in3"),
      unit("ft³", Quantity.VOLUME, FOOT3, "ft3", "cu ft"),
      unit("kg", Quantity.MASS, 1), unit("g", Quantity.MASS, 1e-3), unit("mg", Quantity.MASS, 1e-6),
      unit("t", Quantity.MASS, 1e3, "tonne", "Mg"), unit("lb", Quantity.MASS, POUND, "lbs", "pound", "pounds"),
      unit("oz", Quantity.MASS, POUND / 16, "ounce"),
      unit("s", Quantity.TIME, 1, "sec", "second", "seconds"), unit("min", Quantity.TIME, 60, "minute", "minutes"),
      unit("h", Quantity.TIME, 3600, "hr", "hour", "hours"), unit("d", Quantity.TIME, 86400, "day", "days"),
      unit("°C", Quantity.TEMPERATURE, 1, "C", "degC", "deg C", "ºC"),
      new Unit("°F", Quantity.TEMPERATURE, 5.0 / 9.0, -32 * 5.0 / 9.0, List.of("F", "degF", "deg F")),
      new Unit("K", Quantity.TEMPERATURE, 1, -ZERO_CELSIUS, List.of("kelvin")),
      unit("Pa", Quantity.PRESSURE, 1), unit("kPa", Quantity.PRESSURE, 1e3), unit("hPa", Quantity.PRESSURE, 100),
      unit("mbar", Quantity.PRESSURE, 100), unit("bar", Quantity.PRESSURE, 1e5),
      unit("mmH2O", Quantity.PRESSURE, GRAVITY, "mmH₂O", "mm H2O", "mmWC", "mm WC"),
      unit("inH2O", Quantity.PRESSURE, GRAVITY * 25.4, "inH₂O", "in H2O", "inch H2O", "inWC", "in WC", "\"H2O"),
      unit("L/min", Quantity.VOLUME_FLOW, 1e-3 / 60, "l/min", "lpm", "LPM"),
      unit("L/s", Quantity.VOLUME_FLOW, 1e-3, "l/s"), unit("m³/h", Quantity.VOLUME_FLOW, 1 / 3600.0, "m3/h", "m³/hr"),
      unit("m³/min", Quantity.VOLUME_FLOW, 1 / 60.0, "m3/min"), unit("m³/s", Quantity.VOLUME_FLOW, 1, "m3/s"),
      unit("cfm", Quantity.VOLUME_FLOW, FOOT3 / 60, "CFM", "ft³/min", "ft3/min"),
      unit("kg/h", Quantity.MASS_FLOW, 1 / 3600.0, "kg/hr"), unit("kg/min", Quantity.MASS_FLOW, 1 / 60.0),
      unit("kg/s", Quantity.MASS_FLOW, 1),
      unit("m/s", Quantity.SPEED, 1), unit("km/h", Quantity.SPEED, 1 / 3.6, "kph"),
      unit("ft/s", Quantity.SPEED, 12 * INCH), unit("mm/min", Quantity.SPEED, 1e-3 / 60), unit("cm/h", Quantity.SPEED, 1e-2 / 3600),
      unit("L/(min·cm²)", Quantity.FLUX, 1e-3 / 60 / 1e-4, "L/min/cm2", "L/min/cm²", "l/min/cm2"),
      unit("m³/(s·m²)", Quantity.FLUX, 1, "m/s"),
      unit("1/min", Quantity.RATE, 1 / 60.0, "/min", "per min", "min⁻¹", "strokes/min", "bpm"),
      unit("1/s", Quantity.RATE, 1, "/s", "Hz"), unit("1/h", Quantity.RATE, 1 / 3600.0, "/h", "per hour"),
      unit("g/cm³", Quantity.DENSITY, 1e3, "g/cm3", "g/cc", "kg/L", "t/m3"), unit("kg/m³", Quantity.DENSITY, 1, "kg/m3"),
      unit("°", Quantity.ANGLE, 1, "deg", "degree", "degrees"), unit("rad", Quantity.ANGLE, 180 / Math.PI),
      unit("Pa·s", Quantity.VISCOSITY, 1, "Pa s", "Pa.s"), unit("P", Quantity.VISCOSITY, 0.1, "poise"),
      unit("W", Quantity.POWER, 1), unit("kW", Quantity.POWER, 1e3),
      unit("J", Quantity.ENERGY, 1), unit("kJ", Quantity.ENERGY, 1e3), unit("MJ", Quantity.ENERGY, 1e6),
      unit("kWh", Quantity.ENERGY, 3.6e6));

  private static final Map<Quantity, Map<String, Unit>> BY_SPELLING = index();

  private Units() {
  }

  private static Unit unit(String symbol, Quantity quantity, double factor, String... spellings) {
    return new Unit(symbol, quantity, factor, 0, List.of(spellings));
  }

  private static Map<Quantity, Map<String, Unit>> index() {
    Map<Quantity, Map<String, Unit>> index = new LinkedHashMap<>();
    for (Unit unit : ALL) {
      Map<String, Unit> spellings = index.computeIfAbsent(unit.quantity(), q -> new LinkedHashMap<>());
      List<String> all = new ArrayList<>(unit.spellings());
      all.add(unit.symbol());
      all.forEach(s -> spellings.putIfAbsent(s, unit));
    }
    return index;
  }

  /** All units of one quantity, the order of the pick-lists. */
  public static List<Unit> of(Quantity quantity) {
    return ALL.stream().filter(u -> u.quantity() == quantity).toList();
  }

  /**
   * The unit of a quantity by symbol or spelling; the exact spelling first, then without regard to case where that is
   * unambiguous. A capital M for mega is never read into a small m.
   *
   * @return empty when the text names no unit of this quantity
   */
  public static Optional<Unit> find(Quantity quantity, String text) {
    Map<String, Unit> spellings = BY_SPELLING.get(quantity);
    String wanted = text.strip();
    Unit exact = spellings.get(wanted);
    if (exact != null) {
      return Optional.of(exact);
    }
    List<Unit> loose = spellings.entrySet().stream()
        .filter(e -> e.getKey().equalsIgnoreCase(wanted) && !e.getKey().startsWith("M"))
        .map(Map.Entry::getValue).distinct().toList();
    return loose.size() == 1 ? Optional.of(loose.get(0)) : Optional.empty();
  }

  /** Every unit with this spelling whatever it measures, so that a message can say what was meant. */
  public static List<Unit> named(String text) {
    return ALL.stream().filter(u -> !text.isBlank() && find(u.quantity(), text).filter(u::equals).isPresent()).toList();
  }

  /** The canonical unit of a quantity. */
  public static Unit canonical(Quantity quantity) {
    return of(quantity).stream().filter(u -> u.factor() == 1 && u.offset() == 0).findFirst().orElseThrow();
  }
}
