package daubline.engine.process.balance;

import java.util.List;

/** Indices of a slag analysis. */
public final class SlagIndices {

  /**
   * Pairs of oxides that a bloomery does not reduce and that keep their ratio from charge to slag.
   *
   * <p>Source: P. Dillmann, M. L'Héritier, J. Archaeol. Sci. 34 (2007) 1810 (content from memory).
   */
  public static final List<Ratio> NON_REDUCED = List.of(new Ratio(Oxide.AL2O3, Oxide.SIO2),
      new Ratio(Oxide.K2O, Oxide.CAO), new Ratio(Oxide.MGO, Oxide.AL2O3), new Ratio(Oxide.MNO, Oxide.SIO2),
      new Ratio(Oxide.TIO2, Oxide.AL2O3));

  private SlagIndices() {
  }

  /**
   * A ratio of two oxides.
   *
   * @param above numerator
   * @param below denominator
   */
  public record Ratio(Oxide above, Oxide below) {

    /** The mass ratio; NaN when either was not analysed or is zero. */
    public double of(Analysis analysis) {
      double a = analysis.share(above);
      double b = analysis.share(below);
      return a > 0 && b > 0 ? a / b : Double.NaN;
    }

    /** Natural log of this ratio in the slag over that in the charge: zero when nothing was lost or gained. */
    public double logShift(Analysis slag, Analysis charge) {
      return Math.log(of(slag) / of(charge));
    }

    /** Such as Al2O3/SiO2. */
    public String label() {
      return above.formula() + "/" + below.formula();
    }
  }

  /**
   * Reducible-iron index: all iron as FeO over 2.39 times the silica. Above one there is iron beyond fayalite that a
   * longer or richer reduction could have won; below one the silica exceeds it.
   *
   * <p>Source: M. Charlton, P. Crew, T. Rehren, S. Shennan, J. Anthropol. Archaeol. 29 (2010) 352 (formula from
   * memory).
   */
  public static double reducibleIronIndex(Analysis slag) {
    double silica = slag.share(Oxide.SIO2);
    return silica > 0 ? slag.ironAsFeo().share(Oxide.FEO) / (2.39 * silica) : Double.NaN;
  }
}
