package daubline.engine.process.slag;

import static daubline.engine.process.balance.Oxide.AL2O3;
import static daubline.engine.process.balance.Oxide.CAO;
import static daubline.engine.process.balance.Oxide.FEO;
import static daubline.engine.process.balance.Oxide.K2O;
import static daubline.engine.process.balance.Oxide.MGO;
import static daubline.engine.process.balance.Oxide.MNO;
import static daubline.engine.process.balance.Oxide.NA2O;
import static daubline.engine.process.balance.Oxide.P2O5;
import static daubline.engine.process.balance.Oxide.SIO2;
import static daubline.engine.process.balance.Oxide.TIO2;

/**
 * Urbain's viscosity: η = A T exp(1000 B/T) poise with ln A = -(0.29 B + 11.57); B is a cubic in the glass formers whose
 * constants depend on the kind of modifier and on α = modifiers/(modifiers + amphoterics).
 *
 * <p>One B, the mean over the modifier groups by mole, stands both in A and in the exponent.
 */
final class Urbain {

  /** Mean misfit in log10 on the measured iron-silicate melts; how it was found is tested. */
  static final double OFFSET = 0.36;

  private static final double[][] LIME = {{13.2, 41.5, -45}, {30.5, -117.2, 130}, {-40.4, 232.1, -298.6},
      {60.8, -156.4, 213.6}};
  private static final double[][] MAGNESIA = {{13.2, 15.9, -18.6}, {30.5, -54.1, 33}, {-40.4, 138, -112},
      {60.8, -99.8, 97.6}};
  private static final double[][] IRON = {{13.2, 20, -25.6}, {30.5, 26, -56}, {-40.4, -110.3, 186.2},
      {60.8, 64.3, -104.6}};

  private Urbain() {
  }

  static double log10(Melt melt, double t) {
    double b = b(melt);
    return -1 + Math.log10(t) + (1000 * b / t - (0.29 * b + 11.57)) / Math.log(10);
  }

  /** The constant B. */
  static double b(Melt melt) {
    double scale = 1 + melt.x(TIO2);
    double glass = melt.sum(SIO2, P2O5) / scale;
    double modifiers = (melt.sum(CAO, MGO, NA2O, K2O, FEO, MNO) + 2 * melt.x(TIO2)) / scale;
    double alpha = modifiers > 0 ? modifiers / (modifiers + melt.x(AL2O3) / scale) : 0;
    // the alkalis have no constants of their own here and go with lime, as strong modifiers
    double lime = melt.sum(CAO, NA2O, K2O);
    double magnesia = melt.x(MGO);
    double iron = melt.sum(FEO, MNO);
    double sum = lime + magnesia + iron;
    if (!(sum > 0)) {
      return cubic(LIME, alpha, glass);
    }
    return (lime * cubic(LIME, alpha, glass) + magnesia * cubic(MAGNESIA, alpha, glass)
        + iron * cubic(IRON, alpha, glass)) / sum;
  }

  private static double cubic(double[][] c, double alpha, double glass) {
    double b = 0;
    for (int i = c.length - 1; i >= 0; i--) {
      b = b * glass + c[i][0] + alpha * (c[i][1] + alpha * c[i][2]);
    }
    return b;
  }
}
