package daubline.intake;

import daubline.base.Unit;

/**
 * A column of a file that was recognised.
 *
 * @param index where it stands, from 0
 * @param heading as it stands in the file
 * @param column what it is
 * @param unit the unit its numbers are in; null when they have none
 * @param said the unit as the heading or a row of units says it, * when it was stated for all columns, empty when nobody says it
 */
record Bound(int index, String heading, FormColumn column, Unit unit, String said) {
}
