package daubline.intake.logger;

import daubline.base.Unit;
import java.util.Optional;

/**
 * What one column of a logger's file holds.
 *
 * @param column where it stands, from 1
 * @param name as the file calls it, without unit
 * @param variable the id of the variable it measures; empty when it is none of the catalogue
 * @param unitText the unit as written; empty when there is none
 * @param unit the unit, when it is known
 */
public record ChannelLayout(int column, String name, String variable, String unitText, Optional<Unit> unit) {

  /** A cell's number in canonical units; as it stands when the unit is not known. */
  double canonical(double number) {
    return unit.map(u -> u.toCanonical(number)).orElse(number);
  }
}
