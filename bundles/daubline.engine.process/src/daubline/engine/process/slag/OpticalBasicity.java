package daubline.engine.process.slag;

import daubline.engine.process.balance.Oxide;

/**
 * Viscosity from the corrected optical basicity: ln A = -232.69 Λ² + 357.32 Λ - 144.17, B = 1000 exp(-1.77 + 2.88/Λ),
 * η = A exp(B/T), in tenths of Pa·s. Modifiers that balance alumina are taken out before Λ is formed.
 *
 * <p>Source: K. C. Mills, S. Sridhar, Ironmak. Steelmak. 26 (1999) 262; Λ of P2O5 from memory.
 */
final class OpticalBasicity {

  private OpticalBasicity() {
  }

  static double log10(Melt melt, double t) {
    double basicity = of(melt);
    double lnA = -232.69 * basicity * basicity + 357.32 * basicity - 144.17;
    double b = 1000 * Math.exp(-1.77 + 2.88 / basicity);
    return (lnA + b / t) / Math.log(10);
  }

  /** Corrected optical basicity. */
  static double of(Melt melt) {
    double basic = melt.sum(Oxide.FEO, Oxide.MNO, Oxide.MGO, Oxide.CAO, Oxide.NA2O, Oxide.K2O);
    double kept = basic > 0 ? Math.max(0, basic - melt.x(Oxide.AL2O3)) / basic : 0;
    double above = 0;
    double below = 0;
    for (Oxide oxide : Oxide.values()) {
      double oxygens = melt.x(oxide) * oxygen(oxide) * (isBasic(oxide) ? kept : 1);
      above += oxygens * basicity(oxide);
      below += oxygens;
    }
    return above / below;
  }

  private static boolean isBasic(Oxide oxide) {
    return switch (oxide) {
      case FEO, MNO, MGO, CAO, NA2O, K2O -> true;
      default -> false;
    };
  }

  private static int oxygen(Oxide oxide) {
    return switch (oxide) {
      case SIO2, TIO2 -> 2;
      case AL2O3, FE2O3 -> 3;
      case P2O5 -> 5;
      default -> 1;
    };
  }

  private static double basicity(Oxide oxide) {
    return switch (oxide) {
      case SIO2 -> .48;
      case TIO2 -> .61;
      case AL2O3 -> .60;
      case FE2O3 -> .75;
      case MGO -> .78;
      case NA2O -> 1.15;
      case K2O -> 1.40;
      case P2O5 -> .40;
      default -> 1.0;
    };
  }
}
