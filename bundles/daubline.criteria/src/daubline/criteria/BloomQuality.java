package daubline.criteria;

import daubline.engine.inference.Group;

/** How sound the bloom is, from none to dense. */
public final class BloomQuality extends WordCriterion {

  /** Described by its card. */
  public BloomQuality() {
    super(new Card("bloom_quality", "Bloom quality", Group.PRODUCTS,
        "1 for the quality that the evidence makes most probable; neighbours in the order agree in part.",
        Literature.RECORDING), "bloom_quality");
  }
}
