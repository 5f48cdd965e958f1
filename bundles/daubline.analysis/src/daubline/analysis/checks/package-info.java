/** The integrity checks of a study, one class each, listed in {@link daubline.analysis.checks.Checks#all()}. */
package daubline.analysis.checks;
