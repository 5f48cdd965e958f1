package daubline.engine.inference;

import daubline.base.Amount;
import daubline.base.Trail;

/**
 * One statement of a sheet about one variable.
 *
 * @param id id of the claim
 * @param amount the value in canonical units, or why there is none
 * @param samplingFraction share recovered that this statement rests on, 0 to 1, NaN when not stated
 * @param preservationLimit canonical limit up to which the property survives, NaN when not stated
 * @param picked whether a person picked it among contradictory statements
 * @param doubtful whether it was read with low confidence
 * @param trail where it came from
 */
public record Statement(String id, Amount amount, double samplingFraction, double preservationLimit, boolean picked, boolean doubtful, Trail trail) {

  /** A statement that nobody doubts. */
  public Statement(String id, Amount amount, double samplingFraction, double preservationLimit, boolean picked, Trail trail) {
    this(id, amount, samplingFraction, preservationLimit, picked, false, trail);
  }

  /** The same with what was made of its amount, and the trail that says how. */
  public Statement reading(Amount other, Trail how) {
    return new Statement(id, other, samplingFraction, preservationLimit, picked, doubtful, how);
  }
}
