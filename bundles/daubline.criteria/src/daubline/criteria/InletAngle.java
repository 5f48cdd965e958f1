package daubline.criteria;

import daubline.engine.inference.Group;

/** Angle of the air inlet below the horizontal. */
public final class InletAngle extends NumberCriterion {

  /** Described by its card. */
  public InletAngle() {
    super(new Card("inlet_angle", "Air inlet angle", Group.GEOMETRY,
        "1 when the inlets slope equally; 0.61 at one combined standard uncertainty, 0.14 at two.",
        Literature.RECORDING, Literature.KERNEL), "inlet_angle", Scale.DIFFERENCE,
        Shown.tolerance(5, Shown.DEGREE, "inlets sag in the fire and are hard to measure"));
  }
}
