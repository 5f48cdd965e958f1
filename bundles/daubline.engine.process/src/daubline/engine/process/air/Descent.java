package daubline.engine.process.air;

/** How the charge sinks. */
public final class Descent {

  private Descent() {
  }

  /**
   * Time of a piece from mouth to air inlet, s: volume of the stack times bulk density by burn rate, ore in the voids.
   *
   * @param diameter m
   * @param stack height above the inlet, m
   * @param bulkDensity of charcoal, kg/m³
   * @param burnRate charcoal, kg/s
   */
  public static double residence(double diameter, double stack, double bulkDensity, double burnRate) {
    return Math.PI * diameter * diameter / 4 * stack * bulkDensity / burnRate;
  }

  /** Time between charges of so much charcoal, s. */
  public static double interval(double chargeCharcoal, double burnRate) {
    return chargeCharcoal / burnRate;
  }

  /**
   * Time until slag and metal fill the hearth up to the air inlet, s.
   *
   * @param diameter m
   * @param depth from hearth bottom to inlet, m
   * @param room share of the hearth not taken by charcoal
   * @param slag slag made, kg/s
   * @param slagDensity kg/m³
   * @param metal metal made, kg/s
   * @param metalDensity of the spongy bloom, kg/m³
   */
  public static double blockingTime(double diameter, double depth, double room, double slag, double slagDensity,
      double metal, double metalDensity) {
    return room * Math.PI * diameter * diameter / 4 * depth / (slag / slagDensity + metal / metalDensity);
  }
}
