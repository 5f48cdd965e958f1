package daubline.charts;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** The marks of data points, told apart by shape. */
enum Mark {
  DISC(true), DIAMOND(true), TRIANGLE(true), SQUARE(true), RING(false), OPEN_SQUARE(false);

  private static final double DOT = 1.3;

  private final boolean filled;

  Mark(boolean filled) {
    this.filled = filled;
  }

  /** The mark of a series by its number from 0. */
  static Mark of(int number) {
    return values()[Math.floorMod(number, values().length)];
  }

  /** The mark of a series: six shapes, then the same with a dot inside, then with a bar, so that eighteen differ without colour. */
  static void series(Pen pen, int number, double x, double y) {
    Mark mark = of(number);
    Color color = pen.palette().color(number + number / values().length);
    mark.draw(pen.color(color), x, y, 3);
    pen.color(mark.filled ? pen.palette().paper() : color);
    switch (Math.floorMod(number / values().length, 3)) {
      case 1 -> pen.fill(new Ellipse2D.Double(x - DOT, y - DOT, 2 * DOT, 2 * DOT));
      case 2 -> pen.line(0.9f).line(x - 3.5, y, x + 3.5, y);
      default -> {
        // the first six are plain
      }
    }
  }

  /** The cross of an excavated piece, with a rim of paper, so that other marks do not hide it. */
  static void cross(Pen pen, double x, double y) {
    cross(pen.color(pen.palette().paper()).line(2f), x, y, 3.4);
    cross(pen.color(pen.palette().ink()).line(0.9f), x, y, 3);
  }

  private static void cross(Pen pen, double x, double y, double r) {
    pen.line(x - r, y - r, x + r, y + r).line(x - r, y + r, x + r, y - r);
  }

  /** Draws it in the colour of the pen. */
  void draw(Pen pen, double x, double y, double radius) {
    draw(pen, x, y, radius, filled);
  }

  /** Draws it filled or open. */
  void draw(Pen pen, double x, double y, double radius, boolean solid) {
    Shape shape = shape(x, y, radius);
    if (solid) {
      pen.fill(shape);
    } else {
      Color ink = pen.graphics().getColor();
      pen.color(pen.palette().paper()).fill(shape).color(ink).line(0.9f).draw(shape);
    }
  }

  private Shape shape(double x, double y, double r) {
    return switch (this) {
      case DISC, RING -> new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
      case SQUARE, OPEN_SQUARE -> new Rectangle2D.Double(x - r * 0.88, y - r * 0.88, r * 1.76, r * 1.76);
      case DIAMOND -> polygon(x, y - r * 1.25, x + r * 1.25, y, x, y + r * 1.25, x - r * 1.25, y);
      case TRIANGLE -> polygon(x, y - r * 1.2, x + r * 1.15, y + r * 0.85, x - r * 1.15, y + r * 0.85);
    };
  }

  /** A closed shape through points given as x, y, x, y … */
  static Path2D polygon(double... xy) {
    Path2D path = new Path2D.Double();
    path.moveTo(xy[0], xy[1]);
    for (int i = 2; i < xy.length; i += 2) {
      path.lineTo(xy[i], xy[i + 1]);
    }
    path.closePath();
    return path;
  }
}
