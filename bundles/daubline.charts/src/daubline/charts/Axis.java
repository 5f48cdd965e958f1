package daubline.charts;

import daubline.base.Printed;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * One axis of a plot: what it shows, from where to where, and where its ticks stand.
 *
 * @param label what it shows, with its unit in brackets
 * @param low its lower end
 * @param high its upper end, greater than the lower
 * @param logarithmic whether equal factors take equal room; both ends are then greater than zero
 */
public record Axis(String label, double low, double high, boolean logarithmic) {

  private static final int MOST_TICKS = 7;

  public Axis {
    if (!(low < high) || logarithmic && !(low > 0) || !Double.isFinite(high - low)) {
      throw new IllegalArgumentException("the axis “" + label + "” cannot run from " + low + " to " + high);
    }
  }

  /** An axis that holds all finite values and a little room; from 0 to 1 when there are none. */
  public static Axis around(String label, double... values) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double v : values) {
      if (Double.isFinite(v)) {
        low = Math.min(low, v);
        high = Math.max(high, v);
      }
    }
    if (!(low <= high)) {
      return new Axis(label, 0, 1, false);
    }
    double room = high > low ? 0.04 * (high - low) : Math.max(0.5, 0.1 * Math.abs(high));
    return new Axis(label, low == 0 ? 0 : low - room, high + room, false);
  }

  /** The same with equal factors taking equal room. */
  public Axis onLogarithms() {
    return new Axis(label, low, high, true);
  }

  /** Where a value stands, 0 at the lower and 1 at the upper end; outside this range where it lies outside. */
  double share(double value) {
    return logarithmic ? Math.log(value / low) / Math.log(high / low) : (value - low) / (high - low);
  }

  /** Whether a value can be drawn. */
  boolean holds(double value) {
    double slack = 1e-9;
    return Double.isFinite(value) && (!logarithmic || value > 0) && share(value) >= -slack && share(value) <= 1 + slack;
  }

  /** The value at the nearest place that can be drawn. */
  double clamped(double value) {
    return Math.min(high, Math.max(low, value));
  }

  /** Round values at which ticks stand, rising. */
  List<Double> ticks() {
    List<Double> decades = logarithmic ? decades() : List.of();
    return decades.size() >= 2 ? decades : DoubleStream.of(Ticks.between(low, high, MOST_TICKS)).boxed().toList();
  }

  private List<Double> decades() {
    List<Double> ticks = new ArrayList<>();
    for (int decade = (int) Math.floor(Math.log10(low)); Math.pow(10, decade) <= high; decade++) {
      for (int part : new int[] {1, 2, 5}) {
        double value = part * Math.pow(10, decade);
        if (value >= low * (1 - 1e-9) && value <= high * (1 + 1e-9)) {
          ticks.add(value);
        }
      }
    }
    return ticks;
  }

  /** How a tick is lettered. */
  static String text(double tick) {
    return Printed.number(Math.abs(tick) < 1e-12 ? 0 : tick, 5).replace('-', '−');
  }
}
