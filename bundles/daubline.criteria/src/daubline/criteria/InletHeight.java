package daubline.criteria;

import daubline.engine.inference.Group;

/** Height of the air inlet above the slag floor as found. */
public final class InletHeight extends NumberCriterion {

  /** Described by its card. */
  public InletHeight() {
    super(new Card("inlet_height", "Air inlet height above slag floor", Group.GEOMETRY,
        "1 when the inlets lie equally high above the slag floor; 0.61 at one combined standard uncertainty, 0.14 at two.",
        Literature.RECORDING, Literature.KERNEL), "inlet_height_above_floor", Scale.DIFFERENCE,
        Shown.tolerance(30, Shown.MM, "the floor fills with slag and the inlet sags in the fire by some centimetres"));
  }
}
