package daubline.criteria;

import daubline.engine.inference.Group;

/** Depth to which the wall is oxidised. */
public final class OxidisedDepth extends NumberCriterion {

  /** Described by its card. */
  public OxidisedDepth() {
    super(new Card("oxidised_depth", "Oxidised depth of the wall", Group.FIRE,
        "1 when the walls are reddened equally deep; 0.61 at one combined standard uncertainty, 0.14 at two.",
        Literature.RECORDING, Literature.KERNEL), "oxidised_depth", Scale.DIFFERENCE,
        Shown.tolerance(20, Shown.MM, "depth grows with every smelt and with damp"));
  }
}
