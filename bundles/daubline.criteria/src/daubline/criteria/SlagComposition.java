package daubline.criteria;

import daubline.engine.inference.Group;

/** Bulk composition of the slag. */
public final class SlagComposition extends CompositionCriterion {

  /** Described by its card. */
  public SlagComposition() {
    super(new Card("slag_composition", "Bulk slag composition", Group.CHEMISTRY,
        "1 when all ratios of oxides are equal; exp(−m²/(2(D−1))) with the squared log-ratio distance m² of D oxides in units of its covariance.",
        Literature.LOG_RATIOS, Literature.ZEROS), "SiO2;Al2O3;FeO;MnO;MgO;CaO;K2O;TiO2");
  }
}
