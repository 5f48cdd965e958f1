package daubline.criteria;

import daubline.engine.inference.Group;

/** Whether the wall has an opening for tapping slag. */
public final class TapOpening extends YesNoCriterion {

  /** Described by its card. */
  public TapOpening() {
    super(new Card("tap_opening", "Tap arch or channel", Group.GEOMETRY,
        "1 when both sides agree on present or on searched for and absent; otherwise the odds that it was missed or mistaken.",
        Literature.RECORDING), "tap_opening");
  }
}
