package daubline.criteria;

import daubline.engine.inference.Group;

/** Thickness of the wall at the base. */
public final class WallThickness extends NumberCriterion {

  /** Described by its card. */
  public WallThickness() {
    super(new Card("wall_thickness", "Wall thickness", Group.GEOMETRY,
        "1 when the walls are equally thick; 0.61 at one combined standard uncertainty, 0.14 at two.",
        Literature.RECORDING, Literature.KERNEL), "wall_thickness", Scale.DIFFERENCE,
        Shown.tolerance(25, Shown.MM, "walls are built by hand and lose lining inside and earth outside"));
  }
}
