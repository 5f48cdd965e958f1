package daubline.criteria;

import daubline.engine.inference.Group;

/** Kilograms of slag for one of iron, where known. */
public final class SlagPerIron extends NumberCriterion {

  /** Described by its card. */
  public SlagPerIron() {
    super(new Card("slag_per_iron", "Slag per iron", Group.RESIDUES,
        "1 when equally much slag is left for each kilogram of iron, by ratio; 0.61 at one combined standard uncertainty, 0.14 at two.",
        Literature.RECORDING, Literature.KERNEL), "slag_per_iron", Scale.RATIO,
        Shown.relative(30, "slag masses and yields of repeated smelts scatter by about a third"));
  }
}
