package daubline.ui.record;

import daubline.base.Printed;
import daubline.intake.logger.ChannelSeries;
import daubline.intake.logger.Envelope;
import daubline.intake.logger.Gap;
import daubline.intake.logger.LoggerSeries;
import daubline.intake.logger.StateRun;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What of a logger's file is in view: the stretch of time, the place of the cursor, and where the file stands beside the run log. */
final class Trace {

  private static final double SHORTEST = 10;
  private static final double STEPS_JOINED = 5;

  /** From the lowest to the highest value that a strip has room for, canonical unit. */
  record Scale(double low, double high) {

    private Scale over(Scale other) {
      return new Scale(Math.min(low, other.low), Math.max(high, other.high));
    }

    double span() {
      return high > low ? high - low : 1;
    }
  }

  private final LoggerSeries series;
  private final double[] seconds;
  private final double longestStep;
  private final Map<String, List<ChannelSeries>> strips = new LinkedHashMap<>();
  private final Map<ChannelSeries, List<StateRun>> states = new HashMap<>();
  private final Map<String, Scale> scales = new HashMap<>();
  private OptionalDouble lit;
  private double from;
  private double until;
  private double cursor = Double.NaN;

  /**
   * A file in view.
   *
   * @param lit seconds since the fire was lit at the first row; empty when unknown
   */
  Trace(LoggerSeries series, OptionalDouble lit) {
    this.series = series;
    this.seconds = series.seconds();
    this.lit = lit;
    this.longestStep = STEPS_JOINED * usualStep();
    for (ChannelSeries channel : series.channels()) {
      String unit = channel.layout().unit().map(u -> u.symbol()).orElse(channel.layout().unitText());
      strips.computeIfAbsent(unit, u -> new ArrayList<>()).add(channel);
      states.put(channel, channel.runs(seconds));
    }
    whole();
  }

  private double usualStep() {
    double[] steps = new double[Math.max(0, seconds.length - 1)];
    for (int i = 0; i < steps.length; i++) {
      steps[i] = seconds[i + 1] - seconds[i];
    }
    Arrays.sort(steps);
    return steps.length == 0 ? 1 : Math.max(1e-3, steps[steps.length / 2]);
  }

  double end() {
    return seconds.length == 0 ? 1 : Math.max(SHORTEST, seconds[seconds.length - 1]);
  }

  void whole() {
    scales.clear();
    from = 0;
    until = end();
  }

  double from() {
    return from;
  }

  double until() {
    return until;
  }

  /** The channels by the unit they are shown in. */
  Map<String, List<ChannelSeries>> strips() {
    return strips;
  }

  List<Gap> gaps() {
    return series.gaps();
  }

  /** The stretches in which a channel's sensor said something other than numbers. */
  List<StateRun> states(ChannelSeries channel) {
    return states.get(channel);
  }

  /** The number of a channel in the file, from 1. */
  int number(ChannelSeries channel) {
    return series.channels().indexOf(channel) + 1;
  }

  /**
   * The scale of a strip: it has room for what is in view, and while the view only moves it keeps the room it had, so that
   * the curves do not jump.
   */
  Scale scale(String strip, List<Envelope> inView) {
    double low = inView.stream().flatMapToDouble(e -> Arrays.stream(e.low())).filter(v -> !Double.isNaN(v)).min().orElse(Double.NaN);
    double high = inView.stream().flatMapToDouble(e -> Arrays.stream(e.high())).filter(v -> !Double.isNaN(v)).max().orElse(Double.NaN);
    return Double.isNaN(low) ? scales.getOrDefault(strip, new Scale(0, 1)) : scales.merge(strip, new Scale(low, high), Scale::over);
  }

  Envelope envelope(ChannelSeries channel, int columns) {
    return Envelope.of(seconds, channel, from, until, columns, longestStep);
  }

  /** Moves the view by a share of its length. */
  void pan(double share) {
    double length = until - from;
    double start = Math.max(0, Math.min(end() - length, from + share * length));
    from = start;
    until = start + length;
  }

  /** Makes the view longer or shorter about a time. */
  void zoom(double factor, double about) {
    scales.clear();
    double length = Math.max(SHORTEST, Math.min(end(), (until - from) * factor));
    double share = (about - from) / (until - from);
    from = Math.max(0, Math.min(end() - length, about - share * length));
    until = from + length;
  }

  double cursor() {
    return cursor;
  }

  void cursor(double at) {
    cursor = Math.max(0, Math.min(end(), at));
    if (cursor < from || cursor > until) {
      pan((cursor - (from + until) / 2) / (until - from));
    }
  }

  OptionalDouble lit() {
    return lit;
  }

  void lit(OptionalDouble now) {
    lit = now;
  }

  /** The row nearest to the cursor; -1 when there is no cursor. */
  int cursorRow() {
    return row(cursor);
  }

  /** The row nearest to a time; -1 when there is none. */
  int row(double at) {
    if (Double.isNaN(at) || seconds.length == 0) {
      return -1;
    }
    int found = Arrays.binarySearch(seconds, at);
    int after = found >= 0 ? found : Math.min(seconds.length - 1, -found - 1);
    return after > 0 && at - seconds[after - 1] < seconds[after] - at ? after - 1 : after;
  }

  /** What a channel says in a row, in its own unit, or the state of its sensor. */
  static String text(ChannelSeries channel, int row) {
    double value = channel.value(row);
    return Double.isNaN(value) ? channel.state(row)
        : Printed.number(channel.layout().unit().map(u -> u.fromCanonical(value)).orElse(value), 5) + " " + channel.layout().unit().map(u -> u.symbol()).orElse(channel.layout().unitText());
  }

  /** What all channels say at a time, a line each. */
  String told(double at) {
    int row = row(at);
    return row < 0 ? null : series.channels().stream().map(c -> number(c) + " " + c.layout().name() + ": " + text(c, row)).collect(Collectors.joining("\n"));
  }
}
