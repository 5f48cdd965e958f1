package daubline.criteria;

import daubline.engine.inference.Group;

/** Whether small drops of slag or metal are present. */
public final class Prills extends YesNoCriterion {

  /** Described by its card. */
  public Prills() {
    super(new Card("prills", "Prills", Group.RESIDUES,
        "1 when both sides agree on present or on searched for and absent; otherwise the odds that it was missed or mistaken.",
        Literature.RECORDING), "prills");
  }
}
