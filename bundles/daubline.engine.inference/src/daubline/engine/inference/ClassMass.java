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
 * @param doubtful whether it was read with low confidence
 * @param trail where it came from
 */
public record ClassMass(String residueClass, String name, Amount mass, int pieces, double samplingFraction, boolean doubtful, Trail trail) {

  /** A class that nobody doubts. */
  public ClassMass(String residueClass, String name, Amount mass, int pieces, double samplingFraction, Trail trail) {
    this(residueClass, name, mass, pieces, samplingFraction, false, trail);
  }
}
