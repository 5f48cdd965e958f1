package daubline.engine.process.slag;

import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.Oxide;

/**
 * Where a slag lies in the triangle FeO–SiO2–Al2O3.
 *
 * @param feo share of FeO among the three, 0 to 1
 * @param silica share of SiO2 among the three
 * @param alumina share of Al2O3 among the three
 * @param told share of the whole slag that the three make up; what the triangle leaves out is one less this
 */
public record TernaryPosition(double feo, double silica, double alumina, double told) {

  /** The position; all iron is told as FeO first. NaN shares when none of the three was analysed. */
  public static TernaryPosition of(Analysis slag) {
    Analysis a = slag.ironAsFeo().normalised();
    double sum = a.share(Oxide.FEO) + a.share(Oxide.SIO2) + a.share(Oxide.AL2O3);
    return new TernaryPosition(a.share(Oxide.FEO) / sum, a.share(Oxide.SIO2) / sum, a.share(Oxide.AL2O3) / sum, sum);
  }

  /** Abscissa in a triangle of side one with FeO at the left, SiO2 at the right and Al2O3 at the top. */
  public double x() {
    return silica + alumina / 2;
  }

  /** Height in that triangle. */
  public double y() {
    return alumina * Math.sqrt(3) / 2;
  }
}
