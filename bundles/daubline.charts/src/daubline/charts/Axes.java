package daubline.charts;

import daubline.base.Printed;
import java.awt.geom.Rectangle2D;

/** A plotting area with two even scales. */
final class Axes {

  private static final int MOST_TICKS = 6;
  private final Pen pen;
  private final Rectangle2D area;
  private final double xLow;
  private final double xHigh;
  private final double yLow;
  private final double yHigh;

  /** Scales from the lowest to the highest value of each axis; equal ends are widened. */
  Axes(Pen pen, Rectangle2D area, double[] x, double[] y) {
    this.pen = pen;
    this.area = area;
    double dx = x[0] == x[1] ? Math.max(1, Math.abs(x[0])) / 2 : 0;
    double dy = y[0] == y[1] ? Math.max(1, Math.abs(y[0])) / 2 : 0;
    xLow = x[0] - dx;
    xHigh = x[1] + dx;
    yLow = y[0] - dy;
    yHigh = y[1] + dy;
  }

  double x(double value) {
    return area.getX() + (value - xLow) / (xHigh - xLow) * area.getWidth();
  }

  double y(double value) {
    return area.getMaxY() - (value - yLow) / (yHigh - yLow) * area.getHeight();
  }

  /** The highest value of the left scale. */
  double top() {
    return yHigh;
  }

  /** The frame. */
  Axes frame() {
    pen.color(pen.palette().ink()).line(Pen.THIN).draw(area);
    return this;
  }

  /** Numbers and their grid lines along the left. */
  Axes left(String title) {
    for (double tick : Ticks.between(yLow, yHigh, MOST_TICKS)) {
      pen.color(pen.palette().quiet()).line(0.25f).line(area.getX(), y(tick), area.getMaxX(), y(tick));
      pen.color(pen.palette().ink()).text(Printed.number(tick), area.getX() - 3, y(tick) + 2.5, Pen.SMALL, Pen.At.RIGHT);
    }
    pen.turned(title, area.getX() - 30, area.getCenterY(), Pen.NORMAL, -90, Pen.At.CENTRE);
    return this;
  }

  /** Numbers along the bottom. */
  Axes bottom(String title) {
    pen.color(pen.palette().ink());
    for (double tick : Ticks.between(xLow, xHigh, MOST_TICKS)) {
      pen.line(Pen.THIN).line(x(tick), area.getMaxY(), x(tick), area.getMaxY() + 2.5);
      pen.text(Printed.number(tick), x(tick), area.getMaxY() + 10, Pen.SMALL, Pen.At.CENTRE);
    }
    return title(title);
  }

  /** What the bottom shows. */
  Axes title(String title) {
    pen.color(pen.palette().ink()).text(Pen.fit(title, Pen.NORMAL, area.getWidth() + 20), area.getCenterX(), area.getMaxY() + 21, Pen.NORMAL, Pen.At.CENTRE);
    return this;
  }

  /** A word below a place on the bottom. */
  Axes word(double at, String word, double width) {
    pen.color(pen.palette().ink()).line(Pen.THIN).line(x(at), area.getMaxY(), x(at), area.getMaxY() + 2.5);
    pen.text(Pen.fit(word, Pen.SMALL, width), x(at), area.getMaxY() + 10, Pen.SMALL, Pen.At.CENTRE);
    return this;
  }

  /** The lowest and highest of some values, with a little room on both sides. */
  static double[] range(double... values) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double v : values) {
      low = Double.isFinite(v) ? Math.min(low, v) : low;
      high = Double.isFinite(v) ? Math.max(high, v) : high;
    }
    double room = (high - low) * 0.06;
    return low <= high ? new double[] {low - room, high + room} : new double[] {0, 1};
  }
}
