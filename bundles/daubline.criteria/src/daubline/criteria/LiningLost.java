package daubline.criteria;

import daubline.engine.inference.Group;

/** Thickness of lining lost to the fire and the slag. */
public final class LiningLost extends NumberCriterion {

  /** Described by its card. */
  public LiningLost() {
    super(new Card("lining_thickness_lost", "Lining thickness lost", Group.FIRE,
        "1 when the linings lost equally much; 0.61 at one combined standard uncertainty, 0.14 at two.",
        Literature.RECORDING, Literature.KERNEL), "lining_thickness_lost", Scale.DIFFERENCE,
        Shown.tolerance(10, Shown.MM, "wear differs round the wall and from smelt to smelt"));
  }
}
