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
 * @param trail where it came from
 */
public record Statement(String id, Amount amount, double samplingFraction, double preservationLimit, boolean picked, Trail trail) {
}
