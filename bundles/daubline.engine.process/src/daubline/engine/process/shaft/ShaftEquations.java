package daubline.engine.process.shaft;

import static daubline.engine.process.thermo.Constants.ATM;
import static daubline.engine.process.thermo.Constants.M_C;
import static daubline.engine.process.thermo.Constants.M_CO;
import static daubline.engine.process.thermo.Constants.M_CO2;
import static daubline.engine.process.thermo.Constants.M_FE;
import static daubline.engine.process.thermo.Constants.M_H;
import static daubline.engine.process.thermo.Constants.M_H2O;
import static daubline.engine.process.thermo.Constants.M_N2;
import static daubline.engine.process.thermo.Constants.R;
import static daubline.engine.process.thermo.Constants.T0;

import daubline.engine.process.thermo.Air;

/**
 * The equations of one furnace. The state at a height, scaled to order one, is: gas carbon; for each size class of the
 * ore the degree of reduction past FeO and past iron; water carried by the solids, gas and solid temperature. Two more
 * numbers belong to the whole furnace: the charcoal burnt and the share of iron that becomes metal.
 *
 * <p>Carbon that descends equals the carbon of the gas at the same height, and gas oxygen follows from the ore, so that
 * both elements balance exactly; hydrogen of the blast follows from the shift ({@link WaterGas}). Source: counter-current balances of our own with the reduction kinetics of Takahashi,
 * Takahashi, Yagi and Omori, Trans. ISIJ 26 (1986) 765, and transfer coefficients after Wakao (from memory). One
 * instance serves one thread: it keeps what depends on temperature alone between calls.
 */
final class ShaftEquations {

  static final int CARBON = 0;
  /** Of the first class; each further one is two numbers on. */
  static final int TO_WUSTITE = 1;
  static final int TO_METAL = 2;
  /** Kelvin in one unit of scaled temperature. */
  static final double KILO = 1000;
  /** Mass of haematite per mass of iron. */
  static final double HAEMATITE_PER_IRON = 1.4297;

  private static final double SCHMIDT_ROOT = Math.cbrt(.75);
  private static final double PRANDTL_ROOT = Math.cbrt(.70);
  private static final double SOFT = 1e-4;
  private static final double LN10 = Math.log(10);
  /** Steam gasifies charcoal about three times as fast as CO2 (two to five times, from memory). */
  private static final double STEAM_REACTS = 3;
  /** H2O passes the film 1.6 times as fast as CO2. Source: Marrero and Mason 1972, as in {@link OreStep}. */
  private static final double STEAM_PASSES = 1.6;
  private static final double M_H2 = 2 * M_H;
  /** Viscosity at 298.15 K by the law that gives 1.8e-5 Pa s at 293.15 K. */
  private static final double VISCOSITY = 1.8e-5 * Math.pow(T0 / 293.15, .7);

  final ShaftInputs in;
  /** Size classes of the ore. */
  final int classes;
  /** Numbers in the state, and the places of those after the ore. */
  final int n;
  final int water;
  final int gasTemperature;
  final int solidTemperature;
  final WaterGas waterGas;
  private final boolean moist;
  final double area;
  final double oxygen;
  final double nitrogen;
  /** Moles of carbon per second in one unit of scaled carbon flow: twice the oxygen. */
  final double unit;
  /** Dry charcoal, kg/s, in one unit of scaled fuel. */
  final double fuelUnit;
  final double ambient;
  /** Iron, mol per kg of dry charcoal. */
  final double ironPerFuel;
  /** Inert solids, kg per kg of dry charcoal. */
  final double inertPerFuel;
  /** Water, mol per kg of dry charcoal. */
  final double waterPerFuel;
  private final double size;
  private final double surface;
  private final double coreResistance;
  private final double wall;
  private final double carbonDensity;
  private final double reactivity;
  private final double activation;
  private final double speed;
  private final double[] share;
  private final double[] radius;
  private final double[] oreFactor;
  private final double melts;
  private final double width;
  private final double drying;
  private final OreStep toWustite;
  private final OreStep toMetal;
  private double gasT;
  private double viscosity;
  private double diffusion;
  private double conduction;
  private double solidT;
  private double c0;
  private double boudouard;
  private double chemical;
  private double unmolten;
  private double dried;
  private double cpCo;
  private double cpCo2;
  private double cpNitrogen;
  private double cpSteam;
  private double hCo;
  private double hCo2;
  private double hSteam;
  private double cpHydrogen;
  private double hHydrogen;
  private double cpCarbon;
  private double hCarbon;
  private double hWater;
  private double hHaematite;
  private double hFeo;
  private double hIron;

  ShaftEquations(ShaftInputs in) {
    this.in = in;
    classes = in.sizes().count();
    n = 4 + 2 * classes;
    water = n - 3;
    gasTemperature = n - 2;
    solidTemperature = n - 1;
    toWustite = OreStep.toWustite(classes);
    toMetal = OreStep.toMetal(classes);
    double d = in.get(ShaftParameter.DIAMETER);
    area = Math.PI * d * d / 4;
    Air air = Air.ofBlower(in.get(ShaftParameter.AIR)).lessLeak(in.get(ShaftParameter.LEAK));
    double vapour = in.get(ShaftParameter.VAPOUR);
    oxygen = air.oxygen() / (1 + vapour);
    nitrogen = air.nitrogen() / (1 + vapour);
    waterGas = new WaterGas((oxygen + nitrogen) * vapour);
    moist = waterGas.isThere();
    double fixed = in.get(ShaftParameter.FIXED_CARBON);
    unit = 2 * oxygen;
    fuelUnit = unit * M_C / fixed;
    ambient = in.get(ShaftParameter.AMBIENT);
    double ratio = in.get(ShaftParameter.ORE_RATIO);
    double iron = in.get(ShaftParameter.ORE_IRON);
    ironPerFuel = ratio * iron / M_FE;
    inertPerFuel = ratio * (1 - HAEMATITE_PER_IRON * iron) + in.get(ShaftParameter.ASH);
    waterPerFuel = (wet(in.get(ShaftParameter.CHARCOAL_MOISTURE)) + ratio * wet(in.get(ShaftParameter.ORE_MOISTURE)))
        / M_H2O;
    size = in.get(ShaftParameter.CHARCOAL_SIZE);
    surface = 6 * (1 - in.get(ShaftParameter.VOIDAGE)) / (in.get(ShaftParameter.SPHERICITY) * size);
    coreResistance = size / (10 * in.get(ShaftParameter.CHARCOAL_CONDUCTIVITY));
    wall = Math.PI * d * in.get(ShaftParameter.WALL_LOSS);
    double bulk = in.get(ShaftParameter.CHARCOAL_DENSITY);
    carbonDensity = bulk * fixed / M_C;
    reactivity = in.get(ShaftParameter.REACTIVITY);
    activation = in.get(ShaftParameter.ACTIVATION) / R;
    speed = M_C / (fixed * bulk * area);
    double oreIron = in.get(ShaftParameter.ORE_DENSITY) * iron / M_FE;
    share = new double[classes];
    radius = new double[classes];
    oreFactor = new double[classes];
    for (int i = 0; i < classes; i++) {
      share[i] = in.sizes().share(i);
      radius[i] = in.oreSize(i) / 2;
      oreFactor[i] = 3 * in.get(ShaftParameter.REDUCIBILITY) / (radius[i] * oreIron);
    }
    melts = in.get(ShaftParameter.ORE_MELTS);
    width = in.get(ShaftParameter.MELTING_WIDTH);
    drying = in.get(ShaftParameter.DRYING);
  }

  private static double wet(double moisture) {
    return moisture / (1 - moisture);
  }

  /** Descent, m/s, at a scaled carbon flow. */
  double descent(double carbon) {
    return speed * unit * carbon;
  }

  /** Gas oxygen, mol/s, at a state: what air and hearth brought plus what the ore below this height has not yet lost. */
  double gasOxygen(double[] u, int at, double fuel, double metal) {
    double ironFlow = fuel * fuelUnit * ironPerFuel;
    return gasOxygen(toWustite(u, at), toMetal(u, at), ironFlow, metal);
  }

  private double gasOxygen(double x1, double x2, double ironFlow, double metal) {
    return 2 * oxygen + waterGas.flow() + ironFlow * (.5 + metal - .5 * x1 - x2);
  }

  /** Degree of reduction past FeO, all classes together. */
  double toWustite(double[] u, int at) {
    return mean(u, at + TO_WUSTITE);
  }

  /** Degree of reduction past iron, all classes together. */
  double toMetal(double[] u, int at) {
    return mean(u, at + TO_METAL);
  }

  private double mean(double[] u, int at) {
    if (classes == 1) {
      return u[at];
    }
    double sum = share[0] * u[at];
    for (int i = 1; i < classes; i++) {
      sum += share[i] * u[at + 2 * i];
    }
    return sum;
  }

  /** H2O that the blast's hydrogen makes at a state, mol/s. */
  double blastSteam(double[] u, int at, double fuel, double metal) {
    if (!moist) {
      return 0;
    }
    double carbon = u[at + CARBON] * unit;
    waterGas.heat(KILO * u[at + solidTemperature]);
    forgetHeat();
    return waterGas.split(carbon, gasOxygen(u, at, fuel, metal) - carbon);
  }

  /** To be called after the shift took another temperature than the last slope: what is kept for that is then not used. */
  void forgetHeat() {
    solidT = Double.NaN;
  }

  /**
   * Slope of the scaled state over height, per metre.
   *
   * @param u states, the one wanted starting at {@code at}
   * @param fuel scaled charcoal
   * @param metal share of iron that becomes metal
   * @param out where the slopes go
   */
  void slope(double[] u, int at, double fuel, double metal, double[] out, int to) {
    double carbon = Math.max(u[at + CARBON], .05) * unit;
    double x1 = toWustite(u, at);
    double x2 = toMetal(u, at);
    double wet = u[at + water] * unit;
    double tg = KILO * Math.max(u[at + gasTemperature], .2);
    double ts = KILO * Math.max(u[at + solidTemperature], .2);
    heatGas(tg);
    heatSolid(ts);
    double dry = fuel * fuelUnit;
    double ironFlow = dry * ironPerFuel;
    double excess = gasOxygen(x1, x2, ironFlow, metal) - carbon;
    double blastSteam = moist ? waterGas.split(carbon, excess) : 0;
    double hydrogen = waterGas.flow() - blastSteam;
    double steam = wet + blastSteam;
    double co2 = excess - blastSteam;
    double co = carbon - co2;
    double moles = carbon + nitrogen + steam + hydrogen;
    double y1 = co / moles;
    double y2 = co2 / moles;
    double flux = (co * M_CO + co2 * M_CO2 + nitrogen * M_N2 + steam * M_H2O + hydrogen * M_H2) / area;
    double reynolds = Math.max(1e-9, flux * size / viscosity);
    double transfer = 1.1 * Math.exp(.6 * Math.log(reynolds));
    double heat = surface / (size / ((2 + transfer * PRANDTL_ROOT) * conduction) + coreResistance) * area;

    double film = surface * (2 + transfer * SCHMIDT_ROOT) * diffusion / size;
    double gasified = gasified(y1, y2, film);
    double yHydrogen = hydrogen / moles;
    double ySteam = blastSteam / moles;
    if (moist) {
      gasified += gasifiedBySteam(y1, yHydrogen, ySteam, film);
    }
    double v = speed * carbon;
    reduce(u, at, out, to, y1, y2, yHydrogen, ySteam, reynolds, v);
    double d1 = toWustite(out, to);
    double d2 = toMetal(out, to);
    double dw = dried * wet / v;
    double dOxygen = -ironFlow * (.5 * d1 + d2);
    out[to + CARBON] = gasified / unit;
    out[to + water] = dw / unit;

    double exchange = heat * (tg - ts);
    double gasCapacity = co * cpCo + co2 * cpCo2 + nitrogen * cpNitrogen + steam * cpSteam + hydrogen * cpHydrogen;
    out[to + gasTemperature] = (-exchange - wall * (tg - ambient)) / gasCapacity / KILO;
    double solidCapacity = carbon * cpCarbon + dry * inertPerFuel * 1000 + wet * 75.3
        + ironFlow * ((1 - x1) * 71.3 + (x1 - x2) * 56.8 + x2 * 37.5);
    double released = (2 * gasified - dOxygen) * hCo + (dOxygen - gasified) * hCo2 + dw * hSteam;
    double stored = gasified * hCarbon + dw * hWater + ironFlow * (-d1 * hHaematite + (d1 - d2) * hFeo + d2 * hIron);
    double gain = released - stored - exchange;
    if (moist) {
      // the shift follows gas and charge: its heat depends on how fast the charge warms
      double shiftHeat = hCo - hCo2 - hHydrogen + hSteam;
      gain += shiftHeat * waterGas.slope(gasified, dOxygen - gasified);
      solidCapacity -= shiftHeat * waterGas.slopeByHeat();
    }
    out[to + solidTemperature] = gain / solidCapacity / KILO;
  }

  /** Slopes of the degrees of reduction, each class with its own radius in the same gas. */
  private void reduce(double[] u, int at, double[] out, int to, double y1, double y2, double yHydrogen, double ySteam, double reynolds, double v) {
    for (int i = 0; i < classes; i++) {
      int first = at + TO_WUSTITE + 2 * i;
      double r = radius[i];
      double film = 1 / ((2 + .6 * Math.sqrt(reynolds * 2 * r / size) * SCHMIDT_ROOT) * diffusion / (2 * r));
      double fast1 = toWustite.speed(i, u[first], y1, y2, r, film);
      double fast2 = toMetal.speed(i, u[first + 1], y1, y2, r, film);
      if (moist) {
        fast1 += toWustite.hydrogenSpeed(i, yHydrogen, ySteam, r, film);
        fast2 += toMetal.hydrogenSpeed(i, yHydrogen, ySteam, r, film);
      }
      int place = to + TO_WUSTITE + 2 * i;
      out[place] = -(fast1 * c0 * 2 * oreFactor[i]) / v;
      out[place + 1] = -(fast2 * c0 * oreFactor[i] * u[first] * unmolten) / v;
    }
  }

  /** Properties of the gas, kept until another temperature is asked for. */
  private void heatGas(double tg) {
    if (tg == gasT) {
      return;
    }
    gasT = tg;
    double log = Math.log(tg / T0);
    viscosity = VISCOSITY * Math.exp(.7 * log);
    diffusion = 1.6e-5 * Math.exp(1.75 * log);
    conduction = .026 * Math.exp(.8 * log);
    cpCo = Enthalpy.CO.cp(tg);
    cpCo2 = Enthalpy.CO2.cp(tg);
    cpNitrogen = Enthalpy.N2.cp(tg);
    cpSteam = Enthalpy.STEAM.cp(tg);
    hCo = Enthalpy.CO.at(tg);
    hCo2 = Enthalpy.CO2.at(tg);
    hSteam = Enthalpy.STEAM.at(tg);
    if (moist) {
      cpHydrogen = Enthalpy.H2.cp(tg);
      hHydrogen = Enthalpy.H2.at(tg);
    }
  }

  /** Rates and heats that depend on the temperature of the solids alone, kept until another is asked for. */
  private void heatSolid(double ts) {
    if (ts == solidT) {
      return;
    }
    solidT = ts;
    double inverse = 1 / ts;
    c0 = ATM * inverse / R;
    boudouard = Math.exp(Math.min(30, 9141 * inverse + 2.24e-4 * ts - 9.595) * LN10);
    chemical = carbonDensity * reactivity * Math.exp(-activation * (inverse - 1 / 1123.15)) / c0;
    toWustite.heat(inverse);
    toMetal.heat(inverse);
    if (moist) {
      waterGas.heat(ts);
      toWustite.shift(waterGas.constant());
      toMetal.shift(waterGas.constant());
    }
    unmolten = logistic((melts - ts) / width);
    dried = drying * logistic((ts - 373.15) / 10);
    cpCarbon = Enthalpy.CARBON.cp(ts);
    hCarbon = Enthalpy.CARBON.at(ts);
    hWater = Enthalpy.WATER.at(ts);
    hHaematite = Enthalpy.HAEMATITE.at(ts);
    hFeo = Enthalpy.FEO.at(ts);
    hIron = Enthalpy.IRON.at(ts);
  }

  /** Boudouard gasification, mol C/(s m): chemistry and film transfer in series, driven by distance to equilibrium. */
  private double gasified(double y1, double y2, double film) {
    double series = chemical * film / (chemical + film);
    return area * series * c0 * softMax(y2 - y1 * y1 * boudouard, SOFT);
  }

  /** Gasification by the steam of the blast, mol C/(s m): C + H2O = CO + H2, as the above. */
  private double gasifiedBySteam(double y1, double yHydrogen, double ySteam, double film) {
    double reacts = STEAM_REACTS * chemical;
    double passes = STEAM_PASSES * film;
    double drive = softMax(ySteam - y1 * yHydrogen * boudouard / waterGas.constant(), SOFT * (yHydrogen + ySteam));
    return area * reacts * passes / (reacts + passes) * c0 * drive;
  }

  static double softMax(double x, double softness) {
    return (x + Math.sqrt(x * x + softness * softness)) / 2;
  }

  static double logistic(double x) {
    return 1 / (1 + Math.exp(-Math.clamp(x, -60, 60)));
  }
}
