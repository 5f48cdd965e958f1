package daubline.engine.process.slag;

import daubline.base.Source;
import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.Oxide;

/** Density of liquid slag from partial molar volumes. */
public final class SlagDensity {

  /** Where the volumes come from. */
  public static final Source SOURCE = Source.published("K. C. Mills, B. J. Keene, Int. Mater. Rev. 32 (1987) 1, partial "
      + "molar volumes at 1500 °C with 0.01 % per kelvin");

  private SlagDensity() {
  }

  /** Density, kg/m³, at t in K; within about 2 % for usual slags. */
  public static double of(Analysis slag, double t) {
    Melt melt = new Melt(slag);
    double mass = 0;
    double volume = 0;
    for (Oxide oxide : Oxide.values()) {
      mass += melt.x(oxide) * oxide.molarMass();
      volume += melt.x(oxide) * volume(oxide, melt);
    }
    return mass / (volume * 1e-6 * (1 + 1e-4 * (t - 1773)));
  }

  /** Molar volume at 1773 K, cm³/mol; that of P2O5 from memory. */
  private static double volume(Oxide oxide, Melt melt) {
    double alumina = melt.x(Oxide.AL2O3);
    return switch (oxide) {
      case SIO2 -> 19.55 + 7.966 * melt.x(Oxide.SIO2);
      case AL2O3 -> 28.3 + 32 * alumina + 31.45 * alumina * alumina;
      case CAO -> 20.7;
      case MGO -> 16.1;
      case NA2O -> 33;
      case K2O -> 51.8;
      case FEO -> 15.8;
      case MNO -> 15.6;
      case TIO2 -> 24;
      case FE2O3 -> 38.4;
      case P2O5 -> 65.7;
    };
  }
}
