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

import daubline.base.Source;
import daubline.engine.process.balance.Analysis;
import java.util.function.ToDoubleBiFunction;

/**
 * Viscosity of liquid slag. All read the slag with its iron as FeO. They were made for other melts, so their spread is
 * the honest uncertainty; the calibrated one is the first choice for slags rich in iron.
 */
public enum ViscosityModel {
  /** Urbain's model with the constants of the manganese and iron group. */
  URBAIN("Urbain, iron group", Source.published("G. Urbain, Steel Res. 58 (1987) 111; constants by group as used by "
      + "K. C. Mills, Southern African Pyrometallurgy 2011"), Urbain::log10),
  /** Riboud's model for mould slags. */
  RIBOUD("Riboud", Source.published("P. V. Riboud, Y. Roux, L.-D. Lucas, H. Gaye, Fachber. Hüttenprax. 19 (1981) 859"),
      ViscosityModel::riboud),
  /** Optical basicity after Mills and Sridhar. */
  OPTICAL_BASICITY("optical basicity", Source.published("K. C. Mills, S. Sridhar, Ironmak. Steelmak. 26 (1999) 262"),
      OpticalBasicity::log10),
  /** Shaw's model for magmas. */
  SHAW("Shaw", Source.published("H. R. Shaw, Am. J. Sci. 272 (1972) 870"), ViscosityModel::shaw),
  /** Urbain's shape, shifted by one constant to fit measured FeO–SiO2(–Al2O3) melts. */
  CALIBRATED("Urbain shifted to measured iron-silicate melts", Source.derived("Urbain, less "
      + Urbain.OFFSET + " in log10: the mean misfit on 142 measurements of G. Kaiura et al., Can. Metall. Q. 16 (1977) "
      + "156, and M. Chen et al., Metall. Mater. Trans. B 44 (2013) 820; leaving one study out the r.m.s. is 0.12"),
      (melt, t) -> Urbain.log10(melt, t) - Urbain.OFFSET);

  private final String label;
  private final Source source;
  private final ToDoubleBiFunction<Melt, Double> formula;

  ViscosityModel(String label, Source source, ToDoubleBiFunction<Melt, Double> formula) {
    this.label = label;
    this.source = source;
    this.formula = formula;
  }

  /** The name to print. */
  public String label() {
    return label;
  }

  /** Where the formula comes from. */
  public Source source() {
    return source;
  }

  /**
   * Viscosity of the liquid, Pa·s.
   *
   * @param slag analysis, mass shares
   * @param t temperature, K; the models do not know of the liquidus
   */
  public double of(Analysis slag, double t) {
    return Math.pow(10, log10(slag, t));
  }

  /** Decimal logarithm of the viscosity in Pa·s. */
  public double log10(Analysis slag, double t) {
    return formula.applyAsDouble(new Melt(slag), t);
  }

  /** The constant -19.81 gives Pa·s; with -17.51, also printed, the result is poise. */
  private static double riboud(Melt melt, double t) {
    double breakers = melt.sum(CAO, MGO, FEO, MNO);
    double alkali = melt.sum(NA2O, K2O);
    double alumina = melt.x(AL2O3);
    double lnA = -19.81 + 1.73 * breakers + 7.02 * alkali - 35.76 * alumina;
    double b = 31140 - 23896 * breakers - 39159 * alkali + 68833 * alumina;
    return Math.log10(t) + (lnA + b / t) / Math.log(10);
  }

  private static double shaw(Melt melt, double t) {
    double s = shawSlope(melt);
    return (s * 1e4 / t - 1.5 * s - 6.40) / Math.log(10) - 1;
  }

  static double shawSlope(Melt melt) {
    double silica = melt.sum(SIO2, P2O5);
    double sum = 6.7 * melt.x(AL2O3) + 3.4 * melt.sum(FEO, MNO, MGO) + 4.5 * melt.sum(CAO, TIO2)
        + 2.8 * melt.sum(NA2O, K2O);
    return silica * sum / (1 - silica);
  }
}
