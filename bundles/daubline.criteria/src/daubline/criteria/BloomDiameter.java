package daubline.criteria;

import daubline.engine.inference.Group;

/** Width of the bloom or of the hollow it left. */
public final class BloomDiameter extends NumberCriterion {

  /** Described by its card. */
  public BloomDiameter() {
    super(new Card("bloom_diameter", "Bloom diameter", Group.PRODUCTS,
        "1 when the blooms are equally wide, by ratio; 0.61 at one combined standard uncertainty, 0.14 at two.",
        Literature.RECORDING, Literature.KERNEL), "bloom_diameter", Scale.RATIO,
        Shown.relative(20, "blooms are ragged and compacted at extraction"));
  }
}
