package daubline.criteria;

import daubline.engine.inference.Group;

/** Whether tapped slag is present. */
public final class TappedSlag extends YesNoCriterion {

  /** Described by its card. */
  public TappedSlag() {
    super(new Card("tapped_slag", "Tapped slag", Group.RESIDUES,
        "1 when tapped slag is present on both sides or searched for and absent on both; otherwise the odds that the excavators missed it or mistook it.",
        Literature.RECORDING), "tapped_slag");
  }
}
