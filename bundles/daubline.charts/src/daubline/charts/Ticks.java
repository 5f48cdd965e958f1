package daubline.charts;

import daubline.base.Printed;

/** Round numbers for axes. */
final class Ticks {

  private Ticks() {
  }

  /** A step of 1, 2 or 5 times a power of ten that divides a range into about so many parts. */
  static double step(double range, int parts) {
    double raw = range / parts;
    double power = Math.pow(10, Math.floor(Math.log10(raw)));
    double rest = raw / power;
    return power * (rest < 1.5 ? 1 : rest < 3.5 ? 2 : rest < 7.5 ? 5 : 10);
  }

  /** The label of a tick, with as many decimals as the step has, and a real minus sign. */
  static String label(double value, double step) {
    int decimals = Math.max(0, (int) -Math.floor(Math.log10(step) + 1e-9));
    double shown = Math.abs(value) < step * 1e-6 ? 0 : value;
    return Printed.fixed(shown, decimals).replace('-', '−');
  }
}
