package daubline.charts;

import daubline.base.Printed;
import java.awt.Color;
import java.awt.geom.Rectangle2D;

/** Bands of grey by which a response is told, the darker the more, with their key. */
record Bands(double low, double high) {

  private static final int COUNT = 7;

  /** Bands over these values; NaN does not count, and equal ends are widened. */
  static Bands over(double[] values) {
    double low = java.util.Arrays.stream(values).filter(Double::isFinite).min().orElse(0);
    double high = java.util.Arrays.stream(values).filter(Double::isFinite).max().orElse(1);
    return new Bands(low, high > low ? high : low + 1);
  }

  private static Color shade(Palette palette, int band) {
    double share = 0.75 * band / (COUNT - 1);
    Color a = palette.paper();
    Color b = palette.ink();
    return new Color((int) (a.getRed() + share * (b.getRed() - a.getRed())), (int) (a.getGreen() + share * (b.getGreen() - a.getGreen())),
        (int) (a.getBlue() + share * (b.getBlue() - a.getBlue())));
  }

  /** The shade of a value. */
  Color shade(Palette palette, double value) {
    return shade(palette, (int) Math.min(COUNT - 1, Math.max(0, Math.floor((value - low) / (high - low) * COUNT))));
  }

  /** The key: boxes from a left edge upwards, the limits beside them. */
  void key(Pen pen, double x, double top, double bottom) {
    double h = (bottom - top) / COUNT;
    for (int b = 0; b < COUNT; b++) {
      Rectangle2D box = new Rectangle2D.Double(x, bottom - (b + 1) * h, 12, h);
      pen.color(shade(pen.palette(), b)).fill(box).color(pen.palette().ink()).line(0.3f).draw(box);
    }
    for (int b = 0; b <= COUNT; b++) {
      pen.text(Printed.number(low + b * (high - low) / COUNT, 3), x + 15, bottom - b * h + 2.5, Pen.SMALL, Pen.At.LEFT);
    }
  }

  /** A trial that was burnt, with its outcome beside it. */
  static void trial(Pen pen, double x, double y, double outcome, boolean right) {
    pen.color(pen.palette().paper());
    Mark.DISC.draw(pen, x, y, 4.2);
    pen.color(pen.palette().ink());
    Mark.DISC.draw(pen, x, y, 3);
    if (Double.isFinite(outcome)) {
      pen.textOnPaper(Printed.number(outcome, 3), x + (right ? -6 : 6), y + 2.5, Pen.SMALL, right ? Pen.At.RIGHT : Pen.At.LEFT);
    }
  }
}
