package daubline.criteria;

import daubline.engine.inference.Group;

/** Mass of the bloom, where one is evidenced. */
public final class BloomMass extends NumberCriterion {

  /** Described by its card. */
  public BloomMass() {
    super(new Card("bloom_mass", "Bloom mass", Group.PRODUCTS,
        "1 when the blooms are equally heavy, by ratio; 0.61 at one combined standard uncertainty, 0.14 at two.",
        Literature.RECORDING, Literature.KERNEL), "bloom_mass", Scale.RATIO,
        Shown.relative(30, "yields of repeated smelts scatter by about a third"));
  }
}
