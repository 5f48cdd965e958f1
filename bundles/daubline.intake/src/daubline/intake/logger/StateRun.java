package daubline.intake.logger;

/**
 * A stretch of rows in which a sensor said one word in place of numbers.
 *
 * @param from time of its first row, s since the first row of the file
 * @param until time of its last row, s
 * @param word open, saturated, removed, fault or the sensor's own word
 */
public record StateRun(double from, double until, String word) {
}
