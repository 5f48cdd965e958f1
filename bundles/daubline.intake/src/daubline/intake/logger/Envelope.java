package daubline.intake.logger;

import java.util.Arrays;

/**
 * A channel as a strip of some columns of picture points: the lowest and highest value in each, so that a peak of one
 * second is seen in a view of six hours, and nothing is joined across a gap or a state.
 *
 * @param low lowest value in each column, canonical unit; NaN where there is none
 * @param high highest value in each column
 * @param joined whether a column goes on from the one before it without a break
 */
public record Envelope(double[] low, double[] high, boolean[] joined) {

  /**
   * The strip of a channel between two times.
   *
   * @param seconds times of the rows, s, not falling
   * @param channel the channel
   * @param from first time, s
   * @param until last time, s, later than the first
   * @param columns number of columns, at least 1
   * @param longestStep rows farther apart than this, s, are not joined
   */
  public static Envelope of(double[] seconds, ChannelSeries channel, double from, double until, int columns, double longestStep) {
    double[] low = new double[columns];
    double[] high = new double[columns];
    boolean[] joined = new boolean[columns];
    Arrays.fill(low, Double.NaN);
    Arrays.fill(high, Double.NaN);
    double perColumn = (until - from) / columns;
    int row = first(seconds, from);
    double before = Double.NaN;
    double at = Double.NaN;
    for (; row < seconds.length && seconds[row] <= until; row++) {
      double value = channel.value(row);
      int column = Math.min(columns - 1, (int) ((seconds[row] - from) / perColumn));
      if (!Double.isNaN(value)) {
        boolean fresh = Double.isNaN(low[column]);
        joined[column] |= fresh && !Double.isNaN(before) && seconds[row] - at <= longestStep;
        low[column] = fresh ? value : Math.min(low[column], value);
        high[column] = fresh ? value : Math.max(high[column], value);
      }
      before = value;
      at = seconds[row];
    }
    return new Envelope(low, high, joined);
  }

  private static int first(double[] seconds, double from) {
    int found = Arrays.binarySearch(seconds, from);
    int row = found < 0 ? -found - 1 : found;
    while (row > 0 && seconds[row - 1] >= from) {
      row--;
    }
    return row;
  }
}
