package daubline.engine.process.shaft;

import static daubline.engine.process.shaft.ShaftEquations.CARBON;
import static daubline.engine.process.shaft.ShaftEquations.KILO;

import daubline.engine.process.balance.LockedIron;

/** The burning zone and hearth at the foot of the shaft: what closes the equations below. */
final class ShaftHearth {

  private final ShaftEquations shaft;
  private final ShaftInputs in;
  private final double hotZone;
  private final double reoxidised;
  private final double zoneCo;
  private final double loss;

  ShaftHearth(ShaftEquations shaft) {
    this.shaft = shaft;
    in = shaft.in;
    hotZone = in.get(ShaftParameter.HOT_ZONE);
    reoxidised = in.get(ShaftParameter.REOXIDISED);
    zoneCo = in.get(ShaftParameter.ZONE_CO);
    loss = in.get(ShaftParameter.WALL_LOSS)
        * (Math.PI * in.get(ShaftParameter.DIAMETER) * in.get(ShaftParameter.HEARTH) + shaft.area);
  }

  /** All silica reaching the hearth, kg/s. */
  double silica(double fuel) {
    double dry = fuel * shaft.fuelUnit;
    return dry * in.get(ShaftParameter.ORE_RATIO) * in.get(ShaftParameter.ORE_SILICA)
        + dry * in.get(ShaftParameter.ASH) * in.get(ShaftParameter.ASH_SILICA)
        + in.get(ShaftParameter.LINING) * in.get(ShaftParameter.LINING_SILICA);
  }

  /** Largest share of the ore's iron that silica leaves free, 0 to 1. */
  double bound(double fuel) {
    double iron = fuel * shaft.fuelUnit * in.get(ShaftParameter.ORE_RATIO) * in.get(ShaftParameter.ORE_IRON);
    return Math.clamp(1 - LockedIron.byFayalite(silica(fuel)) / iron, 0, 1);
  }

  /** Share of iron that becomes metal by the kinetics of shaft and hot zone, before the bound. */
  double kinetic(double reduced) {
    return (reduced + hotZone * (1 - reduced)) * (1 - reoxidised);
  }

  /** Share of iron that becomes metal. */
  double metal(double reduced, double fuel) {
    return Math.min(kinetic(reduced), bound(fuel));
  }

  /** Scaled carbon that the zone burns. */
  double carbon(double[] u, double fuel, double metal) {
    double iron = fuel * shaft.fuelUnit * shaft.ironPerFuel;
    double fromOxide = iron * (.5 * (1 - shaft.toWustite(u, 0)) + metal - shaft.toMetal(u, 0));
    return (2 * shaft.oxygen + fromOxide + fromSteam(u)) / (2 - zoneCo) / shaft.unit;
  }

  /** Oxygen that the steam of the blast gives to carbon, mol/s. */
  private double fromSteam(double[] u) {
    if (!shaft.waterGas.isThere()) {
      return 0;
    }
    shaft.waterGas.heat(KILO * u[shaft.solidTemperature]);
    shaft.forgetHeat();
    return shaft.waterGas.flow() - shaft.waterGas.steamAt(zoneCo);
  }

  /** Heat lost from the hearth, W. */
  double heatLoss(double[] u) {
    return loss * (KILO * u[shaft.solidTemperature] - shaft.ambient);
  }

  /** Heat in less heat out of the zone as a share of what its oxygen gives when burnt to CO. */
  double heatRemainder(double[] u, double fuel, double metal) {
    double tg = KILO * u[shaft.gasTemperature];
    double ts = KILO * u[shaft.solidTemperature];
    double carbon = u[CARBON] * shaft.unit;
    double iron = fuel * shaft.fuelUnit * shaft.ironPerFuel;
    double steam = shaft.blastSteam(u, 0, fuel, metal);
    double hydrogen = shaft.waterGas.flow();
    double co2 = shaft.gasOxygen(u, 0, fuel, metal) - steam - carbon;
    double in = shaft.oxygen * Enthalpy.O2.at(shaft.ambient) + shaft.nitrogen * Enthalpy.N2.at(shaft.ambient)
        + carbon * Enthalpy.CARBON.at(ts) + iron * (ore(shaft.toWustite(u, 0), shaft.toMetal(u, 0), ts) - ore(1, metal, ts))
        + hydrogen * Enthalpy.STEAM.at(shaft.ambient);
    double out = (carbon - co2) * Enthalpy.CO.at(tg) + co2 * Enthalpy.CO2.at(tg)
        + shaft.nitrogen * Enthalpy.N2.at(tg) + heatLoss(u) + steam * Enthalpy.STEAM.at(tg)
        + (hydrogen - steam) * Enthalpy.H2.at(tg);
    return (in - out) / (shaft.unit * 110527);
  }

  private static double ore(double x1, double x2, double t) {
    return (1 - x1) * Enthalpy.HAEMATITE.at(t) + (x1 - x2) * Enthalpy.FEO.at(t) + x2 * Enthalpy.IRON.at(t);
  }
}
