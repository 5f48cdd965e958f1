package daubline.criteria;

import daubline.engine.inference.Group;

/** Whether the slag bears impressions of straw or wood, as from a packed pit. */
public final class OrganicImpressions extends YesNoCriterion {

  /** Described by its card. */
  public OrganicImpressions() {
    super(new Card("organic_impressions", "Straw or wood impressions", Group.RESIDUES,
        "1 when both sides agree on present or on searched for and absent; otherwise the odds that it was missed or mistaken.",
        Literature.RECORDING), "organic_impressions");
  }
}
