package daubline.criteria;

import daubline.engine.inference.Group;

/** Height to which slag adheres to the wall. */
public final class SlagAdheringHeight extends NumberCriterion {

  /** Described by its card. */
  public SlagAdheringHeight() {
    super(new Card("slag_adhering_height", "Height of slag on the wall", Group.FIRE,
        "1 when slag clings up to the same height; 0.61 at one combined standard uncertainty, 0.14 at two.",
        Literature.RECORDING, Literature.KERNEL), "slag_adhering_height", Scale.DIFFERENCE,
        Shown.tolerance(40, Shown.MM, "slag clings unevenly and is knocked off with the bloom"));
  }
}
