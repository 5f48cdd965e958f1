package daubline.engine.process.shaft;

import daubline.engine.process.thermo.Equilibria;

/**
 * The hydrogen of a moist blast on its way up: H2 and H2O at the equilibrium CO + H2O = CO2 + H2 with the gas about them.
 * It is held at that of {@link #FROZEN} where the charge is cooler. One instance serves one thread: it keeps the last split.
 *
 * <p>Source: ln K = a + b/T + c ln T through the Gibbs energies of {@code Species} at three temperatures.
 */
final class WaterGas {

  /** Below 400 °C ore and iron no longer hasten the shift, K (order of shift catalysts of iron oxide, from memory). */
  static final double FROZEN = 673.15;
  /** Over how many kelvin it stops (assumed). */
  private static final double WIDTH = 50;
  private static final double[] LAW = law(700, 1100, 1700);

  private final double flow;
  private double k;
  private double byHeat;
  private double steam;
  private double carbon;
  private double excess;

  /** The hydrogen of so much steam in the blast, mol/s. */
  WaterGas(double flow) {
    this.flow = flow;
  }

  /** Whether there is any. */
  boolean isThere() {
    return flow > 0;
  }

  /** H2 and H2O together, mol/s; the same at every height. */
  double flow() {
    return flow;
  }

  private static double[] law(double t1, double t2, double t3) {
    double y1 = Math.log(Equilibria.waterGasShift(t1));
    double y2 = Math.log(Equilibria.waterGasShift(t2));
    double y3 = Math.log(Equilibria.waterGasShift(t3));
    double p = (y2 - y1) / (1 / t2 - 1 / t1);
    double q = (y3 - y1) / (1 / t3 - 1 / t1);
    double c = (p - q) / (Math.log(t2 / t1) / (1 / t2 - 1 / t1) - Math.log(t3 / t1) / (1 / t3 - 1 / t1));
    double b = p - c * Math.log(t2 / t1) / (1 / t2 - 1 / t1);
    return new double[] {y1 - b / t1 - c * Math.log(t1), b, c};
  }

  /** Constant of the shift at t in K; valid 500 to 2000 K. */
  static double constant(double t) {
    return Math.exp(LAW[0] + LAW[1] / t + LAW[2] * Math.log(t));
  }

  /** Takes the temperature of the charge, K. */
  void heat(double t) {
    double x = t - FROZEN;
    double root = Math.sqrt(x * x + WIDTH * WIDTH);
    double at = FROZEN + (x + root) / 2;
    k = constant(at);
    byHeat = k * (-LAW[1] / (at * at) + LAW[2] / at) * (1 + x / root) / 2;
  }

  /** The constant at the temperature taken. */
  double constant() {
    return k;
  }

  /**
   * Splits the hydrogen.
   *
   * @param c carbon of the gas, mol/s
   * @param over oxygen of the gas beyond one atom for each of carbon, that is CO2 and H2O together, mol/s
   * @return H2O, mol/s
   */
  double split(double c, double over) {
    carbon = c;
    excess = over;
    double b = excess + flow + k * (carbon - excess);
    steam = 2 * excess * flow / (b + Math.sqrt(Math.max(0, b * b - 4 * (1 - k) * excess * flow)));
    return steam;
  }

  /** How fast the H2O of the last split changes with these, temperature left alone. */
  double slope(double dCarbon, double dExcess) {
    return ((flow - steam + k * steam) * dExcess - k * steam * dCarbon) / steepness();
  }

  /** How fast it changes with the temperature of the charge, mol/s per K. */
  double slopeByHeat() {
    return -(carbon - excess + steam) * steam * byHeat / steepness();
  }

  private double steepness() {
    return flow - steam + excess - steam + k * (carbon - excess + 2 * steam);
  }

  /** H2O leaving a burning zone whose carbon gas holds this share of CO, mol/s. */
  double steamAt(double coShare) {
    return flow * (1 - coShare) / (1 - coShare + coShare * k);
  }
}
