package daubline.engine.process.thermo;

/**
 * Equilibria between gas, carbon and the iron oxides. Gas is told by its share of carbon monoxide CO/(CO + CO2) in
 * moles; a gas richer in CO than the equilibrium reduces.
 *
 * <p>The wüstite of the furnace is Fe0.947O, not FeO: with the tabulated FeO the last step would ask for 83 % CO at
 * 900 °C where 68 % does. The boundaries here are therefore fits to equilibrium measurements.
 */
public final class Equilibria {

  /** Below this temperature wüstite is not stable and magnetite goes straight to iron, K. Source: Chaudron 1921. */
  public static final double WUSTITE_LIMIT = 570 + Constants.ZERO_C;

  private Equilibria() {
  }

  /** A step of the reduction of iron ore by carbon monoxide. */
  public enum Step {
    /** 3 Fe2O3 + CO = 2 Fe3O4 + CO2. */
    HAEMATITE_TO_MAGNETITE(5128.6, 5.7),
    /** Fe3O4 + CO = 3 FeO + CO2, with real wüstite. */
    MAGNETITE_TO_WUSTITE(-3132.5, 3.661),
    /** FeO + CO = Fe + CO2, with real wüstite. */
    WUSTITE_TO_IRON(2240.6, -2.667);

    private final double slope;
    private final double offset;

    Step(double slope, double offset) {
      this.slope = slope;
      this.offset = offset;
    }

    /**
     * Equilibrium constant p(CO2)/p(CO) at t in K; valid about 850 to 1650 K.
     *
     * <p>Source: fits for shaft reduction used with the kinetics of Takahashi, Takahashi, Yagi and Omori, Trans. ISIJ
     * 26 (1986) 765. The last step agrees with the line -18 700 + 22.5 T J/mol (Gaskell, from memory) within one
     * point of CO; for magnetite the sources differ by ten points.
     */
    public double constant(double t) {
      return Math.exp(slope / t + offset);
    }

    /** Share of CO in CO + CO2 at equilibrium, 0 to 1, at t in K. */
    public double coShare(double t) {
      return 1 / (1 + constant(t));
    }

    /** Reaction heat implied by the slope of the fit, J/mol of CO. */
    public double heat() {
      return -Constants.R * slope;
    }
  }

  /**
   * Boudouard constant of C + CO2 = 2 CO, p(CO)²/p(CO2) in atmospheres, at t in K; valid 500 to 2200 K.
   *
   * <p>Source: Gibbs energies of {@link Species}.
   */
  public static double boudouard(double t) {
    double g = 2 * Species.CO.gibbs(t) - Species.CO2.gibbs(t) - Species.C.gibbs(t);
    return Math.exp(-g / (Constants.R * t));
  }

  /**
   * The same by the short form log10(p(CO2)/p(CO)²) = 9141/T + 0.000224 T - 9.595, inverted; quicker, and equal within
   * half a point of CO. Source: the usual textbook fit, checked against {@link #boudouard}.
   */
  public static double boudouardShort(double t) {
    return Math.pow(10, -(9141 / t + 2.24e-4 * t - 9.595));
  }

  /**
   * Share of CO in CO + CO2 in equilibrium with carbon.
   *
   * @param t temperature, K
   * @param carbonPressure p(CO) + p(CO2) in atmospheres: 1 for pure gas, about 0.35 for gas blown with dry air
   */
  public static double boudouardCoShare(double t, double carbonPressure) {
    double k = boudouard(t) / carbonPressure;
    // k = x²/(1-x); the second form keeps its digits when k is large
    return 2 / (1 + Math.sqrt(1 + 4 / k));
  }

  /** Constant of CO + H2O = CO2 + H2 at t in K. Source: Gibbs energies of {@link Species}. */
  public static double waterGasShift(double t) {
    double g = Species.CO2.gibbs(t) + Species.H2.gibbs(t) - Species.CO.gibbs(t) - Species.H2O.gibbs(t);
    return Math.exp(-g / (Constants.R * t));
  }

  /** Share of H2 in H2 + H2O in equilibrium with a step of reduction, 0 to 1, at t in K. */
  public static double hydrogenShare(Step step, double t) {
    return 1 / (1 + step.constant(t) / waterGasShift(t));
  }

  /**
   * How far a gas is above the equilibrium of a step: its CO share minus that at equilibrium. Positive reduces.
   *
   * @param coShare CO/(CO + CO2) of the gas
   * @param t temperature, K
   */
  public static double drivingForce(Step step, double coShare, double t) {
    return coShare - step.coShare(t);
  }
}
