package daubline.charts;

import daubline.base.Printed;
import java.util.stream.LongStream;
import org.jfree.chart.axis.NumberTickUnitSource;

/** Round numbers for axes; the chart library knows which steps are round. */
final class Ticks {

  private static final double SLACK = 1e-9;

  private Ticks() {
  }

  /** The smallest round step that divides a range, greater than zero, into no more than so many parts. */
  static double step(double range, int most) {
    return new NumberTickUnitSource().getCeilingTickUnit(range / most).getSize();
  }

  /** Round values between two ends, the ends included, rising; no more than one more than so many. */
  static double[] between(double low, double high, int most) {
    double step = step(high - low, most);
    return LongStream.rangeClosed((long) Math.ceil(low / step - SLACK), (long) Math.floor(high / step + SLACK)).mapToDouble(i -> i * step).toArray();
  }

  /** The label of a tick, with as many decimals as the step has, and a real minus sign. */
  static String label(double value, double step) {
    int decimals = Math.max(0, (int) -Math.floor(Math.log10(step) + SLACK));
    double shown = Math.abs(value) < step * 1e-6 ? 0 : value;
    return Printed.fixed(shown, decimals).replace('-', '−');
  }
}
