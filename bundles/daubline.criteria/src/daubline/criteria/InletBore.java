package daubline.criteria;

import daubline.engine.inference.Group;

/** Bore of the air inlet. */
public final class InletBore extends NumberCriterion {

  /** Described by its card. */
  public InletBore() {
    super(new Card("inlet_bore", "Air inlet bore", Group.GEOMETRY,
        "1 when the bores are equal; 0.61 at one combined standard uncertainty, 0.14 at two.",
        Literature.RECORDING, Literature.KERNEL), "inlet_bore", Scale.DIFFERENCE,
        Shown.tolerance(4, Shown.MM, "inlets melt back and are reamed while they are cleared"));
  }
}
