package daubline.criteria;

import daubline.engine.inference.Group;

/** Density of the slag. */
public final class SlagDensity extends NumberCriterion {

  /** Described by its card. */
  public SlagDensity() {
    super(new Card("slag_density", "Slag density", Group.RESIDUES,
        "1 when the slags are equally dense; 0.61 at one combined standard uncertainty, 0.14 at two.",
        Literature.RECORDING, Literature.KERNEL), "slag_density", Scale.DIFFERENCE,
        Shown.tolerance(0.2, Shown.DENSITY, "pieces of one slag differ with their pores"));
  }
}
