package daubline.criteria;

import daubline.engine.inference.Group;

/** Number of air inlets. */
public final class InletCount extends NumberCriterion {

  /** Described by its card. */
  public InletCount() {
    super(new Card("inlet_count", "Number of air inlets", Group.GEOMETRY,
        "1 when the numbers are equal, 0.04 when they differ by one.",
        Literature.RECORDING, Literature.KERNEL), "inlet_count", Scale.DIFFERENCE,
        Shown.tolerance(0.4, Shown.ONE, "one inlet more or less is a difference of two and a half tolerances"));
  }
}
