package daubline.criteria;

import daubline.engine.inference.Group;

/** Width of the slag pit. */
public final class PitDiameter extends NumberCriterion {

  /** Described by its card. */
  public PitDiameter() {
    super(new Card("pit_diameter", "Slag pit diameter", Group.GEOMETRY,
        "1 when the pits are equally wide; 0.61 at one combined standard uncertainty, 0.14 at two.",
        Literature.RECORDING, Literature.KERNEL), "pit_diameter", Scale.DIFFERENCE,
        Shown.tolerance(30, Shown.MM, "pits are dug by hand and their edges crumble"));
  }
}
