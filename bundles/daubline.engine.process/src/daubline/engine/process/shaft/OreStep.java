package daubline.engine.process.shaft;

import static daubline.engine.process.thermo.Constants.R;

import java.util.Arrays;

/**
 * A step of reduction in pieces of ore with a sharp front, at a temperature that it remembers, for each size class.
 *
 * <p>Source: rate and diffusion constants of Takahashi, Takahashi, Yagi, Omori, Trans. ISIJ 26 (1986) 765; equilibrium
 * as in {@code Equilibria.Step}. Hydrogen at the front and in the pores: factors from memory, see {@link #FRONT}.
 */
final class OreStep {

  private static final double CORE = 1e-3;
  private static final double SOFT = 1e-4;
  /** Hydrogen reacts at the front about five times as fast as CO at 900 to 1000 °C (order of published rates, from memory). */
  private static final double FRONT = 5;
  /**
   * H2 and H2O pass pores and film about twice as fast as CO and CO2. Source: T. R. Marrero, E. A. Mason, J. Phys. Chem.
   * Ref. Data 1 (1972) 3, in air at 400 °C: 3.7 and 1.6 times; both ways in turn, near the equilibrium of wüstite.
   */
  static final double PASSES = 2;

  private final double rateLog;
  private final double rateSlope;
  private final double poreLog;
  private final double poreSlope;
  private final double balanceSlope;
  private final double balanceLog;
  private double surfaceTerm;
  private double pores;
  private double share;
  private double rate;
  private double equilibrium;
  private double hydrogenTerm;
  private double hydrogenShare;
  private final double[] done;
  private final double[] left;
  private final double[] core;

  private OreStep(int classes, double rateLog, double rateHeat, double poreLog, double poreSlope, double balanceSlope,
      double balanceLog) {
    this.rateLog = rateLog - Math.log(100);
    this.rateSlope = rateHeat * 1000 / R;
    this.poreLog = poreLog - Math.log(1e4);
    this.poreSlope = poreSlope;
    this.balanceSlope = balanceSlope;
    this.balanceLog = balanceLog;
    done = new double[classes];
    Arrays.fill(done, Double.NaN);
    left = new double[classes];
    core = new double[classes];
  }

  /** Fe2O3 to FeO; the way to magnetite never limits. */
  static OreStep toWustite(int classes) {
    return new OreStep(classes, 2.09, 40.0, 2.77, 7200, -3132.5, 3.661);
  }

  /** FeO to iron. */
  static OreStep toMetal(int classes) {
    return new OreStep(classes, 5.42, 61.4, 5.09, 8800, 2240.6, -2.667);
  }

  /** Takes a temperature, told as its inverse, 1/K. */
  void heat(double inverse) {
    double balance = Math.exp(balanceSlope * inverse + balanceLog);
    rate = Math.exp(rateLog - rateSlope * inverse);
    equilibrium = balance;
    surfaceTerm = 1 / (rate * (1 + 1 / balance));
    pores = Math.exp(poreLog - poreSlope * inverse);
    share = 1 / (1 + balance);
  }

  /** Takes the constant of the shift at the same temperature, after {@link #heat}. */
  void shift(double constant) {
    double balance = equilibrium / constant;
    hydrogenShare = 1 / (1 + balance);
    hydrogenTerm = 1 / (FRONT * rate * (1 + 1 / balance));
  }

  /** Speed of reduction by gas concentration, m/s: driving share over the resistances of front, pores and film. */
  double speed(int i, double degree, double y1, double y2, double radius, double film) {
    reach(i, degree);
    double front = core[i];
    double rest = left[i];
    double resistance = surfaceTerm / (front * front) + (1 - Math.min(front, 1)) * radius / (pores * front) + film;
    double drive = ShaftEquations.softMax(y1 - (y1 + y2) * share, SOFT);
    return drive / resistance * rest / (rest + CORE);
  }

  /** The same by hydrogen, for the class and degree last asked for. */
  double hydrogenSpeed(int i, double hydrogen, double steam, double radius, double film) {
    double front = core[i];
    double resistance = hydrogenTerm / (front * front) + ((1 - Math.min(front, 1)) * radius / (pores * front) + film) / PASSES;
    double both = hydrogen + steam;
    double drive = ShaftEquations.softMax(hydrogen - both * hydrogenShare, SOFT * both);
    return drive / resistance * left[i] / (left[i] + CORE);
  }

  /** What is left and the radius of the core, kept until another degree is asked for. */
  private void reach(int i, double degree) {
    if (degree != done[i]) {
      done[i] = degree;
      left[i] = Math.max(1 - degree, 0);
      core[i] = Math.cbrt(left[i] + CORE);
    }
  }
}
