package daubline.criteria;

import daubline.engine.inference.Group;

/** Width of the tap arch or channel. */
public final class TapOpeningWidth extends NumberCriterion {

  /** Described by its card. */
  public TapOpeningWidth() {
    super(new Card("tap_opening_width", "Tap opening width", Group.GEOMETRY,
        "1 when the openings are equally wide; 0.61 at one combined standard uncertainty, 0.14 at two.",
        Literature.RECORDING, Literature.KERNEL), "tap_opening_width", Scale.DIFFERENCE,
        Shown.tolerance(30, Shown.MM, "openings are broken out and sealed again at every tap"));
  }
}
