package daubline.engine.process.shaft;

import static daubline.engine.process.shaft.ShaftEquations.CARBON;
import static daubline.engine.process.shaft.ShaftEquations.HAEMATITE_PER_IRON;
import static daubline.engine.process.shaft.ShaftEquations.KILO;
import static daubline.engine.process.thermo.Constants.M_C;
import static daubline.engine.process.thermo.Constants.M_FE;
import static daubline.engine.process.thermo.Constants.M_O;

import daubline.engine.process.thermo.Air;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a converged state: profile, rates, hearth, and balances taken anew from the ends. */
final class ShaftOutputs {

  private static final double SLAG_DENSITY = 3600;
  private static final double METAL_DENSITY = 4500;

  private final ShaftEquations shaft;
  private final ShaftHearth hearth;
  private final Collocation c;
  private final ShaftInputs in;
  private final double dry;
  private final double ironFlow;

  ShaftOutputs(ShaftEquations shaft, ShaftHearth hearth, Collocation c) {
    this.shaft = shaft;
    this.hearth = hearth;
    this.c = c;
    in = shaft.in;
    dry = c.fuel * shaft.fuelUnit;
    ironFlow = dry * shaft.ironPerFuel;
  }

  /** Air that passes the charcoal by hearth area, m/s. */
  private static double blast(ShaftInputs in) {
    double d = in.get(ShaftParameter.DIAMETER);
    return in.get(ShaftParameter.AIR) * (1 - in.get(ShaftParameter.LEAK)) / (Math.PI * d * d / 4);
  }

  /** Whether so little air reaches the charcoal, below 0.3 L/min per cm², that no hot shaft is to be expected. */
  static boolean isWeak(ShaftInputs in) {
    return blast(in) < .3 / 6;
  }

  /** Why a furnace cannot be solved, as far as its numbers tell. */
  static String reason(ShaftInputs in, boolean dead) {
    if (dead || isWeak(in)) {
      return "too little air reaches the charcoal (" + Math.round(blast(in) * 600) / 100.0 + " L/min per cm²) for a steady hot shaft"
          + (dead ? "; the walls take the heat and the charge stays below 600 °C" : "");
    }
    return "the equations do not settle for these numbers; a value near the end of its range is the usual cause";
  }

  ShaftSolution solution(int steps) {
    return new ShaftSolution(in, Optional.empty(), profile(), rates(), foot(), classes(), balance(), steps);
  }

  private double coShare(int at) {
    double carbon = c.u[at + CARBON] * shaft.unit;
    return 2 - (shaft.gasOxygen(c.u, at, c.fuel, c.metal) - shaft.blastSteam(c.u, at, c.fuel, c.metal)) / carbon;
  }

  /** Moles of gas, mol/s. */
  private double moles(int at) {
    return (c.u[at + CARBON] + c.u[at + shaft.water]) * shaft.unit + shaft.nitrogen + shaft.waterGas.flow();
  }

  private double hydrogen(int at) {
    return shaft.waterGas.flow() - shaft.blastSteam(c.u, at, c.fuel, c.metal);
  }

  private double steam(int at) {
    return shaft.waterGas.flow() - hydrogen(at) + c.u[at + shaft.water] * shaft.unit;
  }

  /** The ore by size class as it comes to the air inlet. */
  private List<ShaftSolution.OreClass> classes() {
    List<ShaftSolution.OreClass> all = new ArrayList<>(shaft.classes);
    for (int i = 0; i < shaft.classes; i++) {
      int first = ShaftEquations.TO_WUSTITE + 2 * i;
      all.add(new ShaftSolution.OreClass(in.oreSize(i), in.sizes().share(i), c.u[first], c.u[first + 1]));
    }
    return List.copyOf(all);
  }

  private List<ShaftSolution.Level> profile() {
    List<ShaftSolution.Level> levels = new ArrayList<>(c.intervals + 1);
    for (int i = 0; i <= c.intervals; i++) {
      int at = i * shaft.n;
      levels.add(new ShaftSolution.Level(c.z[i], KILO * c.u[at + shaft.gasTemperature], KILO * c.u[at + shaft.solidTemperature], coShare(at),
          shaft.toWustite(c.u, at), shaft.toMetal(c.u, at), hydrogen(at) / moles(at), steam(at) / moles(at), shaft.nitrogen / moles(at)));
    }
    return List.copyOf(levels);
  }

  private double metalRate() {
    return ironFlow * c.metal * M_FE;
  }

  private double feo() {
    return ironFlow * (1 - c.metal) * (M_FE + M_O)
        + in.get(ShaftParameter.LINING) * in.get(ShaftParameter.LINING_IRON);
  }

  private double alumina() {
    return dry * in.get(ShaftParameter.ORE_RATIO) * in.get(ShaftParameter.ORE_ALUMINA)
        + in.get(ShaftParameter.LINING) * in.get(ShaftParameter.LINING_ALUMINA);
  }

  private double others() {
    double ore = 1 - HAEMATITE_PER_IRON * in.get(ShaftParameter.ORE_IRON) - in.get(ShaftParameter.ORE_SILICA)
        - in.get(ShaftParameter.ORE_ALUMINA);
    double lining = 1 - in.get(ShaftParameter.LINING_SILICA) - in.get(ShaftParameter.LINING_ALUMINA)
        - in.get(ShaftParameter.LINING_IRON);
    return dry * (in.get(ShaftParameter.ORE_RATIO) * Math.max(ore, 0)
        + in.get(ShaftParameter.ASH) * (1 - in.get(ShaftParameter.ASH_SILICA)))
        + in.get(ShaftParameter.LINING) * lining;
  }

  private double slag() {
    return feo() + hearth.silica(c.fuel) + alumina() + others();
  }

  private ShaftSolution.Rates rates() {
    double limit = 2 * Air.ofBlower(in.get(ShaftParameter.AIR)).oxygen() * M_C;
    double charcoal = dry / (1 - in.get(ShaftParameter.CHARCOAL_MOISTURE));
    return new ShaftSolution.Rates(charcoal,
        dry * in.get(ShaftParameter.ORE_RATIO) / (1 - in.get(ShaftParameter.ORE_MOISTURE)), metalRate(), slag(),
        charcoal / limit, residence());
  }

  /** Simpson's rule on 1/v, the middle of each interval by linear interpolation of the carbon flow. */
  private double residence() {
    double time = 0;
    for (int i = 0; i < c.intervals; i++) {
      double a = c.u[i * shaft.n + CARBON];
      double b = c.u[i * shaft.n + shaft.n + CARBON];
      time += (c.z[i + 1] - c.z[i]) / 6
          * (1 / shaft.descent(a) + 4 / shaft.descent((a + b) / 2) + 1 / shaft.descent(b));
    }
    return time;
  }

  private double wallLoss() {
    double sum = 0;
    for (int i = 0; i < c.intervals; i++) {
      double mean = (c.u[i * shaft.n + shaft.gasTemperature] + c.u[i * shaft.n + shaft.n + shaft.gasTemperature]) / 2 * KILO;
      sum += (c.z[i + 1] - c.z[i]) * (mean - shaft.ambient);
    }
    return sum * Math.PI * in.get(ShaftParameter.DIAMETER) * in.get(ShaftParameter.WALL_LOSS);
  }

  private ShaftSolution.Hearth foot() {
    double slag = slag();
    double hottest = c.hottestSolid();
    double room = in.get(ShaftParameter.HEARTH_ROOM) * shaft.area * in.get(ShaftParameter.HEARTH);
    double runs = ShaftEquations.logistic(
        (hottest - in.get(ShaftParameter.SLAG_RUNS)) / in.get(ShaftParameter.RUNNING_WIDTH));
    int top = shaft.n * c.intervals;
    return new ShaftSolution.Hearth(KILO * c.u[shaft.gasTemperature], KILO * c.u[shaft.solidTemperature], hottest, KILO * c.u[top + shaft.gasTemperature],
        coShare(top), hydrogen(top) / moles(top), hearth.bound(c.fuel), c.metal, runs, feo() / slag, hearth.silica(c.fuel) / slag,
        alumina() / slag, room / (slag / SLAG_DENSITY + metalRate() / METAL_DENSITY), wallLoss(),
        hearth.heatLoss(c.u));
  }

  /** Streams in less streams out between mouth and foot, taken from the states alone. */
  private ShaftSolution.Balance balance() {
    int top = shaft.n * c.intervals;
    double carbonOut = c.u[top + CARBON] * shaft.unit;
    double carbon = (dry * in.get(ShaftParameter.FIXED_CARBON) / M_C - carbonOut) / carbonOut;
    double oxygenOut = shaft.gasOxygen(c.u, top, c.fuel, c.metal);
    double oxygenIn = 2 * shaft.oxygen + shaft.waterGas.flow() + ironFlow * (1.5 - (1 - c.metal));
    double ironIn = dry * in.get(ShaftParameter.ORE_RATIO) * in.get(ShaftParameter.ORE_IRON);
    double ironOut = metalRate() + ironFlow * (1 - c.metal) * M_FE;
    return new ShaftSolution.Balance(carbon, (oxygenIn - oxygenOut) / oxygenIn, (ironIn - ironOut) / ironIn, hydrogenOff(top), energy());
  }

  /** Hydrogen of blast and charge against that of the gas at the mouth; what comes wet to the zone leaves it as steam again. */
  private double hydrogenOff(int top) {
    double into = shaft.waterGas.flow() + dry * shaft.waterPerFuel;
    double out = hydrogen(top) + steam(top);
    return into > 0 ? (into - out) / into : 0;
  }

  /** Air, fuel and charge enter at ambient temperature; gas, steam, metal, slag and lost heat leave. */
  private double energy() {
    int top = shaft.n * c.intervals;
    double tg = KILO * c.u[top + shaft.gasTemperature];
    double ta = shaft.ambient;
    double ts = KILO * c.u[shaft.solidTemperature];
    double carbon = c.u[top + CARBON] * shaft.unit;
    double blastSteam = shaft.blastSteam(c.u, top, c.fuel, c.metal);
    double co2 = shaft.gasOxygen(c.u, top, c.fuel, c.metal) - blastSteam - carbon;
    double steam = (c.u[top + shaft.water] - c.u[shaft.water]) * shaft.unit;
    double inert = dry * shaft.inertPerFuel * 1000;
    double into = shaft.oxygen * Enthalpy.O2.at(ta) + shaft.nitrogen * Enthalpy.N2.at(ta)
        + carbon * Enthalpy.CARBON.at(ta) + ironFlow * Enthalpy.HAEMATITE.at(ta) + steam * Enthalpy.WATER.at(ta)
        + inert * (ta - ts) + shaft.waterGas.flow() * Enthalpy.STEAM.at(ta);
    double out = (carbon - co2) * Enthalpy.CO.at(tg) + co2 * Enthalpy.CO2.at(tg) + shaft.nitrogen * Enthalpy.N2.at(tg)
        + steam * Enthalpy.STEAM.at(tg) + ironFlow * ((1 - c.metal) * Enthalpy.FEO.at(ts)
        + c.metal * Enthalpy.IRON.at(ts)) + hearth.heatLoss(c.u) + wallLoss()
        + blastSteam * Enthalpy.STEAM.at(tg) + (shaft.waterGas.flow() - blastSteam) * Enthalpy.H2.at(tg);
    return (into - out) / (shaft.unit * 110527);
  }
}
