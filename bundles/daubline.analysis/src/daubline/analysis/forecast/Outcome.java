package daubline.analysis.forecast;

/**
 * What came of one figure of a forecast once the trial was burnt, in the unit of the figure.
 *
 * @param value the value observed
 * @param sigma its standard uncertainty; 0 where none is stated
 * @param where what it was taken from, in the user's words
 */
public record Outcome(double value, double sigma, String where) {
}
