package daubline.criteria;

import daubline.base.Source;
import daubline.engine.inference.Group;

/** Ratios of the oxides that a bloomery does not reduce, which ore, lining and ash leave in the slag. */
public final class OxideRatios extends CompositionCriterion {

  /** Described by its card. */
  public OxideRatios() {
    super(new Card("oxide_ratios", "Ratios of non-reduced oxides", Group.CHEMISTRY,
        "1 when all ratios among the oxides that are not reduced are equal; exp(−m²/(2(D−1))) as for the bulk composition.",
        Source.fromMemory("Dillmann & L'Héritier 2007, Journal of Archaeological Science 34, 1810–1823"), Literature.LOG_RATIOS, Literature.ZEROS),
        "SiO2;Al2O3;TiO2;CaO;MgO;K2O");
  }
}
