package daubline.criteria;

import daubline.engine.inference.Group;

/** Outside width of the base. */
public final class BaseExternalDiameter extends NumberCriterion {

  /** Described by its card. */
  public BaseExternalDiameter() {
    super(new Card("base_external_diameter", "Base external diameter", Group.GEOMETRY,
        "1 when the bases are equally wide outside; 0.61 at one combined standard uncertainty, 0.14 at two.",
        Literature.RECORDING, Literature.KERNEL), "base_external_diameter", Scale.DIFFERENCE,
        Shown.tolerance(50, Shown.MM, "the outside of a wall is rough and weathers"));
  }
}
