/**
 * Takes tables of records into an open study: a preview with findings first, then one named change that undo takes back,
 * or nothing at all. {@link daubline.intake.Intake} is the entrance.
 */
package daubline.intake;
