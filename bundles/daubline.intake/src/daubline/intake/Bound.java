package daubline.intake;

import daubline.base.Unit;

/**
 * A column of a file that was recognised.
 *
 * @param index where it stands, from 0
 * @param heading as it stands in the file
 * @param column what it is
 * @param unit the unit its numbers are in; null when they have none
 */
record Bound(int index, String heading, FormColumn column, Unit unit) {
}
