package daubline.criteria;

import daubline.engine.inference.Group;

/** Shape of the base in plan. */
public final class BaseShape extends WordCriterion {

  /** Described by its card. */
  public BaseShape() {
    super(new Card("base_shape", "Base plan shape", Group.GEOMETRY,
        "1 for the word that the evidence makes most probable; otherwise its probability over that of the most probable.",
        Literature.RECORDING), "base_profile_shape");
  }
}
