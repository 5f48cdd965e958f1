package daubline.intake.logger;

import java.util.ArrayList;
import java.util.List;

/** The values of one column of a logger's file in time. */
public final class ChannelSeries {

  private static final int NUMBER = 0;

  private final ChannelLayout layout;
  private final double[] values;
  private final byte[] states;
  private final List<String> words;

  ChannelSeries(ChannelLayout layout, double[] values, byte[] states, List<String> words) {
    this.layout = layout;
    this.values = values;
    this.states = states;
    this.words = words;
  }

  /** What the column holds. */
  public ChannelLayout layout() {
    return layout;
  }

  /** The values in canonical units; NaN where there is no number. */
  public double[] values() {
    return values.clone();
  }

  /** The value of one row in canonical units; NaN where there is no number. */
  public double value(int row) {
    return values[row];
  }

  /**
   * What the sensor said in place of a number: open, saturated, removed, fault or its own word; empty when there is a
   * number or nothing.
   */
  public String state(int row) {
    return states[row] == NUMBER ? "" : words.get(states[row] - 1);
  }

  /** The states that occur, in the order of their first row. */
  public List<String> states() {
    return words;
  }

  /**
   * The stretches in which the sensor said one and the same word.
   *
   * @param seconds times of the rows, s
   */
  public List<StateRun> runs(double[] seconds) {
    List<StateRun> runs = new ArrayList<>();
    for (int row = 0; row < states.length; row++) {
      int first = row;
      while (states[first] != NUMBER && row + 1 < states.length && states[row + 1] == states[first]) {
        row++;
      }
      if (states[first] != NUMBER) {
        runs.add(new StateRun(seconds[first], seconds[row], words.get(states[first] - 1)));
      }
    }
    return runs;
  }
}
