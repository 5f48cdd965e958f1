package daubline.engine.inference;

import daubline.base.Amount;
import daubline.base.Trail;

/**
 * The mass of one residue class.
 *
 * @param residueClass id of the class
 * @param name its name as printed
 * @param mass in kilograms, or why there is none; not weighed is not zero
 * @param pieces number of pieces, negative when not counted
 * @param samplingFraction share recovered, 0 to 1, NaN when not stated
 * @param trail where it came from
 */
public record ClassMass(String residueClass, String name, Amount mass, int pieces, double samplingFraction, Trail trail) {
}
