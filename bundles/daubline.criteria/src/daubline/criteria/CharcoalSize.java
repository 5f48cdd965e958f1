package daubline.criteria;

import daubline.engine.inference.Group;

/** Typical size of the charcoal, or its range. */
public final class CharcoalSize extends NumberCriterion {

  /** Described by its card. */
  public CharcoalSize() {
    super(new Card("charcoal_size", "Charcoal size", Group.FUEL,
        "1 when the charcoal is equally coarse, by ratio; 0.61 at one combined standard uncertainty, 0.14 at two.",
        Literature.RECORDING, Literature.KERNEL), "charcoal_size", Scale.RATIO,
        Shown.relative(30, "sieving, wear and breakage in the ground"));
  }
}
