package daubline.intake;

import daubline.base.Amount;

/**
 * A value that was read from a cell.
 *
 * @param amount in canonical units
 * @param typed the text as it stands
 * @param unit the symbol of its unit; null when it is no number
 */
record ReadValue(Amount amount, String typed, String unit) {
}
