package daubline.engine.process.air;

import daubline.engine.process.thermo.Combustion;
import daubline.engine.process.thermo.Constants;

/** Air through inlet and hearth. Volumes at 20 °C and one atmosphere. */
public final class Blast {

  /** Litres per minute and square centimetre in one m/s. */
  public static final double LITRE_PER_MINUTE_CM2 = 6;
  private static final double AIR_MASS = .028965;
  private static final double ENTRY_LOSS = 1.5;

  private Blast() {
  }

  /** Blast per hearth area, m/s; times 6 it is L/min per cm². */
  public static double perArea(double flow, double diameter) {
    return flow / (Math.PI * diameter * diameter / 4);
  }

  /** Speed in the air inlet, m/s, for a flow in m³/s and the inner diameter of each of so many inlets, m. */
  public static double inletSpeed(double flow, double inletDiameter, int inlets) {
    return flow / (inlets * Math.PI * inletDiameter * inletDiameter / 4);
  }

  /** Density of air, kg/m³, at t in K. */
  public static double density(double t) {
    return Constants.ATM * AIR_MASS / (Constants.R * t);
  }

  /** Dynamic pressure of a speed, Pa: ρ v²/2. Source: Bernoulli. */
  public static double dynamicPressure(double speed, double t) {
    return density(t) * speed * speed / 2;
  }

  /** Pressure to drive the inlet, Pa: dynamic pressure lost at the exit and half of it at the entry. */
  public static double inletPressure(double speed, double t) {
    return ENTRY_LOSS * dynamicPressure(speed, t);
  }

  /**
   * Bounds of the charcoal burnt by a flow of air.
   *
   * @param allCarbonDioxide kg/s as weighed when all oxygen leaves as CO2
   * @param allCarbonMonoxide kg/s as weighed when all oxygen leaves as CO, no more is possible by air alone
   */
  public record BurnBounds(double allCarbonDioxide, double allCarbonMonoxide) {
  }

  /**
   * The bounds, from stoichiometry alone.
   *
   * @param flow air that reaches the charcoal, m³/s
   * @param fixedCarbon fixed carbon of dry charcoal
   * @param moisture moisture of charcoal, wet basis
   */
  public static BurnBounds burnBounds(double flow, double fixedCarbon, double moisture) {
    double carbon = fixedCarbon * (1 - moisture);
    return new BurnBounds(flow * Combustion.carbonPerAir(0) / carbon, flow * Combustion.carbonPerAir(1) / carbon);
  }
}
