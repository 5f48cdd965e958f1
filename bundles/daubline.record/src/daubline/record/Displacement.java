package daubline.record;

import daubline.base.Amount;

/** Density of a piece by displacement in water, and its uncertainty (JCGM 100:2008, 5.1.2). The lift of air is neglected, a tenth of a per cent. */
public final class Displacement {

  /** Temperature that is taken when nobody measured it, °C. */
  public static final double USUAL_TEMPERATURE = 15;

  private Displacement() {
  }

  /**
   * Density of water free of air at ordinary pressure, kg/m³: Tanaka, Girard, Davis, Peuto and Bignell 2001, Metrologia
   * 38, 301–309, equation 1; 0 to 40 °C.
   */
  public static double water(double celsius) {
    double t = celsius;
    return 999.974950 * (1 - (t - 3.983035) * (t - 3.983035) * (t + 301.797) / (522528.9 * (t + 69.34881)));
  }

  /**
   * Density from the mass in air and the mass that the scale shows under water.
   *
   * @param air mass in air, kg
   * @param under mass under water, kg, less than that in air
   * @param celsius temperature of the water, °C
   * @return kg/m³ with standard uncertainty where one of the masses has one
   */
  public static Amount weighed(Amount air, Amount under, double celsius) {
    double lift = air.value() - under.value();
    double water = water(celsius);
    double byAir = -water * under.value() / (lift * lift) * air.sigmaOr(0);
    double byUnder = water * air.value() / (lift * lift) * under.sigmaOr(0);
    return with(water * air.value() / lift, Math.hypot(byAir, byUnder));
  }

  /**
   * Density from the mass and the volume displaced.
   *
   * @param mass kg
   * @param volume m³
   */
  public static Amount displaced(Amount mass, Amount volume) {
    double density = mass.value() / volume.value();
    return with(density, density * Math.hypot(mass.sigmaOr(0) / mass.value(), volume.sigmaOr(0) / volume.value()));
  }

  private static Amount with(double value, double sigma) {
    return sigma > 0 ? Amount.plusMinus(value, sigma) : Amount.exact(value);
  }
}
