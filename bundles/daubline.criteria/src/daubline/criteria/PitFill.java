package daubline.criteria;

import daubline.engine.inference.Group;

/** What filled the slag pit. */
public final class PitFill extends WordCriterion {

  /** Described by its card. */
  public PitFill() {
    super(new Card("pit_fill", "Slag pit fill", Group.GEOMETRY,
        "1 for the word that the evidence makes most probable; otherwise its probability over that of the most probable.",
        Literature.RECORDING), "pit_fill");
  }
}
