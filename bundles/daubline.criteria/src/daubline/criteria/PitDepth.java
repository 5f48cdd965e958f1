package daubline.criteria;

import daubline.engine.inference.Group;

/** Depth of the slag pit. */
public final class PitDepth extends NumberCriterion {

  /** Described by its card. */
  public PitDepth() {
    super(new Card("pit_depth", "Slag pit depth", Group.GEOMETRY,
        "1 when the pits are equally deep; 0.61 at one combined standard uncertainty, 0.14 at two.",
        Literature.RECORDING, Literature.KERNEL), "pit_depth", Scale.DIFFERENCE,
        Shown.tolerance(40, Shown.MM, "pits are dug by hand and the old surface is often lost"));
  }
}
