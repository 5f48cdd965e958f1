package daubline.base;

/**
 * A kind of quantity with its canonical unit: the coherent SI unit, with two exceptions that the SI accepts and the
 * trade uses, degree Celsius for temperature and degree for plane angle. Shares are fractions of one.
 */
public enum Quantity {
  /** A count or a ratio of like quantities. */
  NUMBER("1"),
  /** Mass or volume share, 0 to 1. */
  FRACTION("1"),
  /** Length in metres. */
  LENGTH("m"),
  /** Area in square metres. */
  AREA("m²"),
  /** Volume in cubic metres. */
  VOLUME("m³"),
  /** Mass in kilograms. */
  MASS("kg"),
  /** Duration in seconds. */
  TIME("s"),
  /** Temperature in degrees Celsius. */
  TEMPERATURE("°C"),
  /** Pressure in pascals. */
  PRESSURE("Pa"),
  /** Volume flow in cubic metres per second. */
  VOLUME_FLOW("m³/s"),
  /** Mass flow in kilograms per second. */
  MASS_FLOW("kg/s"),
  /** Speed in metres per second. */
  SPEED("m/s"),
  /** Volume flow per area in cubic metres per second and square metre. */
  FLUX("m³/(s·m²)"),
  /** Events per second. */
  RATE("1/s"),
  /** Density in kilograms per cubic metre. */
  DENSITY("kg/m³"),
  /** Plane angle in degrees. */
  ANGLE("°"),
  /** Dynamic viscosity in pascal seconds. */
  VISCOSITY("Pa·s"),
  /** Power in watts. */
  POWER("W"),
  /** Energy in joules. */
  ENERGY("J");

  private final String canonical;

  Quantity(String canonical) {
    this.canonical = canonical;
  }

  /** The symbol of the canonical unit; "1" for a pure number. */
  public String canonicalSymbol() {
    return canonical;
  }
}
