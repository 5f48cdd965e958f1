package daubline.engine.process.thermo;

/**
 * Charcoal burning in air: gas formed, carbon burnt, flame temperature.
 *
 * @param air the air, mol or mol/s
 * @param coShare CO/(CO + CO2) of the gas formed, 0 to 1
 * @param fuelWater liquid water that comes with the fuel and leaves with the gas, mol per mol of carbon
 * @param steamReacted share of all water that reacts with carbon to CO and H2, 0 to 1
 */
public record Combustion(Air air, double coShare, double fuelWater, double steamReacted) {

  private static final double LIQUID_WATER_HEAT = 75.3;
  private static final double LIQUID_WATER_FORMATION = -285830;
  private static final double COLDEST = 250;
  private static final double HOTTEST = 4000;

  /** Dry air and dry fuel. */
  public static Combustion dry(double coShare) {
    return new Combustion(Air.DRY_PER_OXYGEN, coShare, 0, 0);
  }

  /**
   * The gas formed, mol or mol/s.
   *
   * @param co carbon monoxide
   * @param co2 carbon dioxide
   * @param nitrogen nitrogen
   * @param water water vapour
   * @param hydrogen hydrogen
   */
  public record Gas(double co, double co2, double nitrogen, double water, double hydrogen) {

    /** All moles. */
    public double total() {
      return co + co2 + nitrogen + water + hydrogen;
    }

    /** Enthalpy, J or W, at t in K. */
    public double enthalpy(double t) {
      return co * Species.CO.enthalpy(t) + co2 * Species.CO2.enthalpy(t) + nitrogen * Species.N2.enthalpy(t)
          + water * Species.H2O.enthalpy(t) + hydrogen * Species.H2.enthalpy(t);
    }
  }

  /** Carbon that the air gasifies, mol or mol/s: by the oxygen, and by the steam that reacts. Exact stoichiometry. */
  public double carbon() {
    double byOxygen = 2 * air.oxygen();
    double perCarbon = 2 - coShare;
    // steam of the air and of the fuel brings s(w_a + w_f C) oxygen atoms
    return (byOxygen + steamReacted * air.water()) / (perCarbon - steamReacted * fuelWater);
  }

  /** The gas formed. Every element is kept exactly. */
  public Gas gas() {
    double carbon = carbon();
    double water = air.water() + fuelWater * carbon;
    double hydrogen = steamReacted * water;
    return new Gas(coShare * carbon, (1 - coShare) * carbon, air.nitrogen(), water - hydrogen, hydrogen);
  }

  /**
   * Temperature that the gas takes, K: enthalpy in equals enthalpy out, without dissociation.
   *
   * <p>Source: energy balance on {@link Species}; reference 1221 °C for carbon and air of 25 °C burnt to CO.
   *
   * @param airT temperature of the air, K
   * @param carbonT temperature at which carbon reaches the flame, K
   * @param lost heat lost from the zone, as a share of what carbon burnt to CO gives, 0 to 1
   */
  public double flameTemperature(double airT, double carbonT, double lost) {
    double carbon = carbon();
    Gas gas = gas();
    double in = air.enthalpy(airT) + carbon * Species.C.enthalpy(carbonT)
        + carbon * fuelWater * (LIQUID_WATER_FORMATION + LIQUID_WATER_HEAT * (Constants.BLOWER_T - Constants.T0))
        + lost * 2 * air.oxygen() * Species.CO.enthalpy(Constants.T0);
    double low = COLDEST;
    double high = HOTTEST;
    while (high - low > 1e-6) {
      double middle = (low + high) / 2;
      if (gas.enthalpy(middle) < in) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /** Carbon burnt per cubic metre of dry air at 20 °C, kg/m³: 0.2092 to CO, 0.1046 to CO2. Exact stoichiometry. */
  public static double carbonPerAir(double coShare) {
    return 2 / (2 - coShare) * Constants.M_C * Air.ofBlower(1).oxygen();
  }
}
