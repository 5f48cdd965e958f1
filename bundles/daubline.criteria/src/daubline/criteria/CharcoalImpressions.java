package daubline.criteria;

import daubline.engine.inference.Group;

/** Whether the slag bears impressions of charcoal. */
public final class CharcoalImpressions extends YesNoCriterion {

  /** Described by its card. */
  public CharcoalImpressions() {
    super(new Card("charcoal_impressions", "Charcoal impressions", Group.RESIDUES,
        "1 when both sides agree on present or on searched for and absent; otherwise the odds that it was missed or mistaken.",
        Literature.RECORDING), "charcoal_impressions");
  }
}
