package daubline.engine.process.shaft;

import static daubline.engine.process.thermo.Constants.ATM;
import static daubline.engine.process.thermo.Constants.M_C;
import static daubline.engine.process.thermo.Constants.M_CO;
import static daubline.engine.process.thermo.Constants.M_CO2;
import static daubline.engine.process.thermo.Constants.M_FE;
import static daubline.engine.process.thermo.Constants.M_H2O;
import static daubline.engine.process.thermo.Constants.M_N2;
import static daubline.engine.process.thermo.Constants.R;
import static daubline.engine.process.thermo.Constants.T0;

import daubline.engine.process.thermo.Air;

/**
 * The equations of one furnace. The state at a height, scaled to order one, is: gas carbon, degree of reduction of the
 * ore past FeO and past iron, water carried by the solids, gas and solid temperature. Two more numbers belong to the
 * whole furnace: the charcoal burnt and the share of iron that becomes metal.
 *
 * <p>Carbon that descends equals the carbon of the gas at the same height, and gas oxygen follows from the ore, so that
 * both elements balance exactly. Source: counter-current balances of our own with the reduction kinetics of Takahashi,
 * Takahashi, Yagi and Omori, Trans. ISIJ 26 (1986) 765, and transfer coefficients after Wakao (from memory). One
 * instance serves one thread: it keeps what depends on temperature alone between calls.
 */
final class ShaftEquations {

  /** Numbers in the state. */
  static final int N = 6;
  static final int CARBON = 0;
  static final int TO_WUSTITE = 1;
  static final int TO_METAL = 2;
  static final int WATER = 3;
  static final int GAS_T = 4;
  static final int SOLID_T = 5;
  /** Kelvin in one unit of scaled temperature. */
  static final double KILO = 1000;
  /** Mass of haematite per mass of iron. */
  static final double HAEMATITE_PER_IRON = 1.4297;

  private static final double SCHMIDT_ROOT = Math.cbrt(.75);
  private static final double PRANDTL_ROOT = Math.cbrt(.70);
  private static final double SOFT = 1e-4;
  private static final double LN10 = Math.log(10);
  /** Viscosity at 298.15 K by the law that gives 1.8e-5 Pa s at 293.15 K. */
  private static final double VISCOSITY = 1.8e-5 * Math.pow(T0 / 293.15, .7);

  final ShaftInputs in;
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
  private final double radius;
  private final double oreFactor;
  private final double melts;
  private final double width;
  private final double drying;
  private final OreStep toWustite = OreStep.toWustite();
  private final OreStep toMetal = OreStep.toMetal();
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
  private double cpCarbon;
  private double hCarbon;
  private double hWater;
  private double hHaematite;
  private double hFeo;
  private double hIron;

  ShaftEquations(ShaftInputs in) {
    this.in = in;
    double d = in.get(ShaftParameter.DIAMETER);
    area = Math.PI * d * d / 4;
    Air air = Air.ofBlower(in.get(ShaftParameter.AIR)).lessLeak(in.get(ShaftParameter.LEAK));
    oxygen = air.oxygen();
    nitrogen = air.nitrogen();
    double fixed = in.get(ShaftParameter.FIXED_CARBON);
    unit = 2 * oxygen;
    fuelUnit = unit * M_C / fixed;
    ambient = in.get(ShaftParameter.AMBIENT);
    double ratio = in.get(ShaftParameter.ORE_RATIO);
    double share = in.get(ShaftParameter.ORE_IRON);
    ironPerFuel = ratio * share / M_FE;
    inertPerFuel = ratio * (1 - HAEMATITE_PER_IRON * share) + in.get(ShaftParameter.ASH);
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
    radius = in.get(ShaftParameter.ORE_SIZE) / 2;
    double oreIron = in.get(ShaftParameter.ORE_DENSITY) * share / M_FE;
    oreFactor = 3 * in.get(ShaftParameter.REDUCIBILITY) / (radius * oreIron);
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
    return 2 * oxygen + ironFlow * (.5 + metal - .5 * u[at + TO_WUSTITE] - u[at + TO_METAL]);
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
    double x1 = u[at + TO_WUSTITE];
    double x2 = u[at + TO_METAL];
    double water = u[at + WATER] * unit;
    double tg = KILO * Math.max(u[at + GAS_T], .2);
    double ts = KILO * Math.max(u[at + SOLID_T], .2);
    double dry = fuel * fuelUnit;
    double ironFlow = dry * ironPerFuel;
    double co2 = gasOxygen(u, at, fuel, metal) - carbon;
    double co = carbon - co2;
    double moles = carbon + nitrogen + water;
    double y1 = co / moles;
    double y2 = co2 / moles;
    double flux = (co * M_CO + co2 * M_CO2 + nitrogen * M_N2 + water * M_H2O) / area;
    heatGas(tg);
    heatSolid(ts);
    double reynolds = Math.max(1e-9, flux * size / viscosity);
    double transfer = 1.1 * Math.exp(.6 * Math.log(reynolds));
    double heat = surface / (size / ((2 + transfer * PRANDTL_ROOT) * conduction) + coreResistance) * area;

    double gasified = gasified(y1, y2, surface * (2 + transfer * SCHMIDT_ROOT) * diffusion / size);
    double v = speed * carbon;
    double film = 1 / ((2 + .6 * Math.sqrt(reynolds * 2 * radius / size) * SCHMIDT_ROOT) * diffusion / (2 * radius));
    double r1 = toWustite.speed(x1, y1, y2, radius, film) * c0 * 2 * oreFactor;
    double r2 = toMetal.speed(x2, y1, y2, radius, film) * c0 * oreFactor * x1 * unmolten;
    double rd = dried;

    double d1 = -r1 / v;
    double d2 = -r2 / v;
    double dw = rd * water / v;
    double dOxygen = -ironFlow * (.5 * d1 + d2);
    out[to + CARBON] = gasified / unit;
    out[to + TO_WUSTITE] = d1;
    out[to + TO_METAL] = d2;
    out[to + WATER] = dw / unit;

    double exchange = heat * (tg - ts);
    double gasCapacity = co * cpCo + co2 * cpCo2 + nitrogen * cpNitrogen + water * cpSteam;
    out[to + GAS_T] = (-exchange - wall * (tg - ambient)) / gasCapacity / KILO;
    double solidCapacity = carbon * cpCarbon + dry * inertPerFuel * 1000 + water * 75.3
        + ironFlow * ((1 - x1) * 71.3 + (x1 - x2) * 56.8 + x2 * 37.5);
    double released = (2 * gasified - dOxygen) * hCo + (dOxygen - gasified) * hCo2 + dw * hSteam;
    double stored = gasified * hCarbon + dw * hWater + ironFlow * (-d1 * hHaematite + (d1 - d2) * hFeo + d2 * hIron);
    out[to + SOLID_T] = (released - stored - exchange) / solidCapacity / KILO;
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

  static double softMax(double x, double softness) {
    return (x + Math.sqrt(x * x + softness * softness)) / 2;
  }

  static double logistic(double x) {
    return 1 / (1 + Math.exp(-Math.clamp(x, -60, 60)));
  }
}
