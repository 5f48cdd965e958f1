package daubline.engine.process.thermo;

/**
 * Air as it enters the furnace.
 *
 * @param oxygen oxygen, mol
 * @param nitrogen nitrogen with argon, mol
 * @param water water vapour, mol
 */
public record Air(double oxygen, double nitrogen, double water) {

  /** Dry air that holds one mole of oxygen. */
  public static final Air DRY_PER_OXYGEN = new Air(1, (1 - Constants.O2_IN_AIR) / Constants.O2_IN_AIR, 0);

  /**
   * Vapour pressure of water over liquid water, Pa.
   *
   * <p>Source: Magnus form 611.2 exp(17.62 t/(243.12 + t)), WMO Guide No. 8 (from memory); checked against 2339 Pa at
   * 20 °C. Valid -20 to 60 °C.
   *
   * @param celsius temperature, °C
   */
  public static double vapourPressure(double celsius) {
    return 611.2 * Math.exp(17.62 * celsius / (243.12 + celsius));
  }

  /** Moles of water per mole of dry air at a relative humidity of 0 to 1, a temperature in K and a pressure in Pa. */
  public static double waterPerDryAir(double humidity, double t, double pressure) {
    double vapour = humidity * vapourPressure(t - Constants.ZERO_C);
    return vapour / (pressure - vapour);
  }

  /**
   * A volume of moist air.
   *
   * @param volume volume, m³ (or m³/s, which gives mol/s)
   * @param t temperature at which the volume is told, K
   * @param pressure pressure, Pa
   * @param humidity relative humidity, 0 to 1
   */
  public static Air ofVolume(double volume, double t, double pressure, double humidity) {
    double total = volume * pressure / (Constants.R * t);
    double ratio = waterPerDryAir(humidity, t, pressure);
    double dry = total / (1 + ratio);
    return new Air(dry * Constants.O2_IN_AIR, dry * (1 - Constants.O2_IN_AIR), dry * ratio);
  }

  /** Dry air at 20 °C and one atmosphere, the usual meaning of a blower's volume; m³/s gives mol/s. */
  public static Air ofBlower(double volume) {
    return ofVolume(volume, Constants.BLOWER_T, Constants.ATM, 0);
  }

  /** Enthalpy, J (or W). */
  public double enthalpy(double t) {
    return oxygen * Species.O2.enthalpy(t) + nitrogen * Species.N2.enthalpy(t) + water * Species.H2O.enthalpy(t);
  }

  /** The same air with a share lost on the way. */
  public Air lessLeak(double leak) {
    double kept = 1 - leak;
    return new Air(oxygen * kept, nitrogen * kept, water * kept);
  }
}
