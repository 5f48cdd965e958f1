package daubline.criteria;

import daubline.engine.inference.Group;

/** Inside width of the base. */
public final class BaseInternalDiameter extends NumberCriterion {

  /** Described by its card. */
  public BaseInternalDiameter() {
    super(new Card("base_internal_diameter", "Base internal diameter", Group.GEOMETRY,
        "1 when the bases are equally wide inside; 0.61 at one combined standard uncertainty, 0.14 at two.",
        Literature.RECORDING, Literature.KERNEL), "base_internal_diameter", Scale.DIFFERENCE,
        Shown.tolerance(20, Shown.MM, "linings are daubed by hand and wear unevenly; about two fingers"));
  }
}
