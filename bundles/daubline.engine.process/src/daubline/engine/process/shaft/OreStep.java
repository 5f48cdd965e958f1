package daubline.engine.process.shaft;

import static daubline.engine.process.thermo.Constants.R;

/**
 * A step of reduction in one piece of ore with a sharp front, at a temperature that it remembers.
 *
 * <p>Source: rate and diffusion constants of Takahashi, Takahashi, Yagi, Omori, Trans. ISIJ 26 (1986) 765; equilibrium
 * as in {@code Equilibria.Step}.
 */
final class OreStep {

  private static final double CORE = 1e-3;
  private static final double SOFT = 1e-4;

  private final double rateLog;
  private final double rateSlope;
  private final double poreLog;
  private final double poreSlope;
  private final double balanceSlope;
  private final double balanceLog;
  private double surfaceTerm;
  private double pores;
  private double share;
  private double done = Double.NaN;
  private double left;
  private double core;

  private OreStep(double rateLog, double rateHeat, double poreLog, double poreSlope, double balanceSlope,
      double balanceLog) {
    this.rateLog = rateLog - Math.log(100);
    this.rateSlope = rateHeat * 1000 / R;
    this.poreLog = poreLog - Math.log(1e4);
    this.poreSlope = poreSlope;
    this.balanceSlope = balanceSlope;
    this.balanceLog = balanceLog;
  }

  /** Fe2O3 to FeO; the way to magnetite never limits. */
  static OreStep toWustite() {
    return new OreStep(2.09, 40.0, 2.77, 7200, -3132.5, 3.661);
  }

  /** FeO to iron. */
  static OreStep toMetal() {
    return new OreStep(5.42, 61.4, 5.09, 8800, 2240.6, -2.667);
  }

  /** Takes a temperature, told as its inverse, 1/K. */
  void heat(double inverse) {
    double balance = Math.exp(balanceSlope * inverse + balanceLog);
    surfaceTerm = 1 / (Math.exp(rateLog - rateSlope * inverse) * (1 + 1 / balance));
    pores = Math.exp(poreLog - poreSlope * inverse);
    share = 1 / (1 + balance);
  }

  /** Speed of reduction by gas concentration, m/s: driving share over the resistances of front, pores and film. */
  double speed(double done, double y1, double y2, double radius, double film) {
    reach(done);
    double resistance = surfaceTerm / (core * core) + (1 - Math.min(core, 1)) * radius / (pores * core) + film;
    double drive = ShaftEquations.softMax(y1 - (y1 + y2) * share, SOFT);
    return drive / resistance * left / (left + CORE);
  }

  /** What is left and the radius of the core, kept until another degree is asked for. */
  private void reach(double degree) {
    if (degree != done) {
      done = degree;
      left = Math.max(1 - degree, 0);
      core = Math.cbrt(left + CORE);
    }
  }
}
