package daubline.engine.process.slag;

import daubline.base.Source;
import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.Oxide;

/**
 * Temperature above which a slag is wholly liquid: the highest of the saturation temperatures of wüstite, olivine and
 * silica.
 *
 * @param temperature liquidus, K
 * @param sigma its standard uncertainty, K
 * @param first the phase that crystallises first
 * @param second a second opinion by the regression of Mills 2016, K; made for mould slags and 50 to 70 K too high here
 */
public record Liquidus(double temperature, double sigma, Primary first, double second) {

  /** Where the formula comes from. */
  public static final Source SOURCE = Source.derived("own formulation: freezing-point equations fitted to wüstite "
      + "1377 °C, fayalite 1205 °C and the eutectics of N. L. Bowen, J. F. Schairer, Am. J. Sci. 24 (1932) 177; "
      + "dilution by other oxides set by the ternary eutectic of FeO–SiO2–Al2O3");
  /** Melting point of wüstite in contact with iron, K. */
  public static final double WUSTITE = 1650;
  /** Melting point of fayalite, K. */
  public static final double FAYALITE = 1478.15;

  private static final double R = 8.314;
  private static final double WUSTITE_FUSION = 24060;
  private static final double FAYALITE_FUSION = 92000;
  private static final double WUSTITE_INTERACTION = 12500;
  private static final double IRON_SIDE = 5.7;
  private static final double SILICA_SIDE = 2.8;
  private static final double DILUTION = 1.2;
  /** Rise of the olivine liquidus by magnesium share, K; the fayalite–forsterite lens, from memory. */
  private static final double MAGNESIUM_RISE = 700;
  /** Mole share of silica on the binary at which silica saturates at 1178 °C. */
  private static final double SILICA_EUTECTIC = .423;
  private static final double SILICA_SLOPE = 3500;
  private static final double BINARY_SIGMA = 20;
  private static final double OTHERS_SIGMA = 400;

  /** The phase that crystallises first. */
  public enum Primary {
    /** FeO. */
    WUSTITE,
    /** Fe2SiO4 with Mn and Mg. */
    OLIVINE,
    /** Tridymite or cristobalite. */
    SILICA
  }

  /**
   * Estimates the liquidus.
   *
   * @throws IllegalArgumentException when the slag has no silica or no iron, for which this model says nothing
   */
  public static Liquidus of(Analysis slag) {
    Melt melt = new Melt(slag);
    double silica = melt.x(Oxide.SIO2);
    double divalent = melt.sum(Oxide.FEO, Oxide.MNO, Oxide.MGO);
    if (!(silica > 0) || !(divalent > 0)) {
      throw new IllegalArgumentException("a liquidus needs SiO2 and FeO in the slag analysis");
    }
    double others = 1 - silica - divalent;
    double wustite = wustite(divalent, silica);
    double olivine = olivine(divalent, silica, melt.x(Oxide.MGO) / divalent);
    double quartz = silica(divalent, silica, others);
    double sigma = Math.hypot(BINARY_SIGMA, OTHERS_SIGMA * others);
    Primary first = wustite >= olivine && wustite >= quartz ? Primary.WUSTITE
        : olivine >= quartz ? Primary.OLIVINE : Primary.SILICA;
    return new Liquidus(Math.max(wustite, Math.max(olivine, quartz)), sigma, first, mills(melt));
  }

  /** Solves ln a = -(ΔH/R)(1/T - 1/Tm) with R T ln γ = α X_Si²; the equation is linear in 1/T. */
  private static double wustite(double iron, double silica) {
    double h = WUSTITE_FUSION / R;
    double inverse = (h / WUSTITE - Math.log(iron)) / (h + WUSTITE_INTERACTION * silica * silica / R);
    return 1 / inverse;
  }

  private static double olivine(double iron, double silica, double magnesium) {
    double pair = iron + silica;
    double x = iron / pair;
    double depth = Math.log(x * x * (1 - x) / (4.0 / 27)) * (x > 2.0 / 3 ? IRON_SIDE : SILICA_SIDE);
    double dilution = 3 * Math.log(pair) * DILUTION;
    return 1 / (1 / FAYALITE - (depth + dilution) * R / FAYALITE_FUSION) + MAGNESIUM_RISE * magnesium;
  }

  /** Steep rise beyond the silica eutectic; other oxides, above all alumina, hold silica in solution. */
  private static double silica(double iron, double silica, double others) {
    double excess = silica / (silica + iron + 3.5 * others) - SILICA_EUTECTIC;
    return 1451 + SILICA_SLOPE * excess;
  }

  /** T = 958 + Σ c x. Source: K. C. Mills et al., ISIJ Int. 56 (2016) 264, for mould slags. */
  private static double mills(Melt m) {
    return 958 + 656.9 * m.x(Oxide.SIO2) + 1040.7 * m.x(Oxide.CAO) + 1343.2 * m.x(Oxide.AL2O3)
        + 1090.5 * m.x(Oxide.MGO) + 137 * m.x(Oxide.NA2O) - 668 * m.x(Oxide.K2O) + 522 * m.x(Oxide.FEO)
        + 760.9 * m.x(Oxide.MNO) + 844 * m.x(Oxide.TIO2);
  }
}
