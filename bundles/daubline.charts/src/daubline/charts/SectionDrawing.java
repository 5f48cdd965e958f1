package daubline.charts;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Draws one furnace section to scale: solid what is excavated, dotted what was built above it, dashed what a trial left. */
final class SectionDrawing {

  private static final double STUB = 60;
  private static final float[] DOTS = {1, 2.2f};
  private static final float[] DASHES = {6, 2.5f};

  private final Pen pen;
  private final double x;
  private final double floor;
  private final double scale;

  /**
   * A drawing.
   *
   * @param x the middle of the furnace
   * @param floor the level of its floor
   * @param scale points to the millimetre
   */
  SectionDrawing(Pen pen, double x, double floor, double scale) {
    this.pen = pen;
    this.x = x;
    this.floor = floor;
    this.scale = scale;
  }

  /** The excavated walls, hatched, their top broken off; the preservation line across. */
  void excavated(Profile p) {
    double height = p.height() > 0 ? p.height() : STUB;
    double wall = p.wallOr(0);
    for (int side = -1; side <= 1; side += 2) {
      Path2D shape = wall(side, p.diameter(), p.diameter(), wall, height);
      if (wall > 0) {
        pen.color(pen.palette().quiet()).line(0.35f).hatch(shape, side < 0 ? 1 : 2, 3);
      }
      pen.color(pen.palette().ink()).line(Pen.THICK).draw(shape);
      spot(shape, p, "wall", p.wall());
    }
    pit(p);
    inlet(p);
    double reach = p.outerDiameter() / 2 + 45;
    pen.color(pen.palette().ink()).line(0.6f, 8, 2, 2, 2).draw(line(-reach, height, reach, height));
    spot(line(-reach, height, reach, height), p, "height", p.height());
    spot(line(-p.diameter() / 2, 0, p.diameter() / 2, 0), p, "diameter", p.diameter());
  }

  /** What was built above the preservation line and is not evidenced by the remains. */
  void conjectured(Profile built, Profile found) {
    double from = found.height() > 0 ? found.height() : STUB;
    if (!(built.height() > from) || !built.isDrawable()) {
      return;
    }
    double top = built.top() > 0 ? built.top() : built.diameter();
    double wall = built.wallOr(found.wallOr(0));
    pen.color(pen.palette().ink()).line(0.9f, DOTS);
    spot(line(-top / 2 - wall, built.height(), top / 2 + wall, built.height()), built, "height", built.height());
    spot(line(-top / 4, built.height() * 0.98, top / 4, built.height() * 0.98), built, "top", built.top());
    for (int side = -1; side <= 1; side += 2) {
      double inner = width(built, from, top) / 2 * side;
      double outer = inner + wall * side;
      pen.draw(line(inner, from, top / 2 * side, built.height()));
      if (wall > 0) {
        pen.draw(line(outer, from, (top / 2 + wall) * side, built.height())).draw(line(top / 2 * side, built.height(), (top / 2 + wall) * side, built.height()));
      }
    }
  }

  private static double width(Profile built, double height, double top) {
    return built.diameter() + (top - built.diameter()) * Math.min(1, height / built.height());
  }

  /** The remains of a trial. */
  void trial(Profile p) {
    pen.color(pen.palette().color(1)).line(1.2f, DASHES);
    double height = p.height() > 0 ? p.height() : STUB;
    for (int side = -1; side <= 1; side += 2) {
      pen.draw(wall(side, p.diameter(), p.diameter(), p.wallOr(0), height));
    }
    spot(line(-p.diameter() / 2, height, p.diameter() / 2, height), p, "height", p.height());
    spot(line(-p.diameter() / 2, height / 2, p.diameter() / 2, height / 2), p, "diameter", p.diameter());
    if (p.inlet() >= 0) {
      double radius = Math.max(p.bore() > 0 ? p.bore() / 2 : 10, 4);
      pen.line(1f).draw(circle(-p.diameter() / 2, p.inlet(), radius));
      inletSpots(p, radius);
    }
  }

  /** The line of the floor. */
  void floor(double reach) {
    pen.color(pen.palette().ink()).line(0.8f).draw(line(-reach, 0, reach, 0));
  }

  private void pit(Profile p) {
    if (p.pit() > 0) {
      Path2D pit = new Path2D.Double();
      pit.moveTo(-p.diameter() / 2, 0);
      pit.curveTo(-p.diameter() / 2, -p.pit() * 1.3, p.diameter() / 2, -p.pit() * 1.3, p.diameter() / 2, 0);
      Shape drawn = pit.createTransformedShape(place());
      pen.draw(drawn);
      spot(drawn, p, "pit", p.pit());
    }
  }

  private void inlet(Profile p) {
    if (p.inlet() >= 0) {
      double radius = Math.max(p.bore() > 0 ? p.bore() / 2 : 10, 4);
      var circle = circle(-p.diameter() / 2, p.inlet(), radius);
      pen.color(pen.palette().paper()).fill(circle).color(pen.palette().ink()).line(0.9f).draw(circle);
      inletSpots(p, radius);
    }
  }

  /** The circle is the bore; its middle down to the floor, how high the inlet stands. */
  private void inletSpots(Profile p, double radius) {
    spot(circle(-p.diameter() / 2, p.inlet(), radius), p, "bore", p.bore());
    spot(line(-p.diameter() / 2, 0, -p.diameter() / 2, p.inlet()), p, "inlet", p.inlet());
  }

  /** Names a measure of the drawing; nothing for one that is not known. */
  private void spot(Shape shape, Profile p, String measure, double value) {
    if (value > 0) {
      Rectangle2D box = shape.getBounds2D();
      pen.spot(new Rectangle2D.Double(box.getX() - 1.5, box.getY() - 1.5, box.getWidth() + 3, box.getHeight() + 3), () -> p.trail(measure, value));
    }
  }

  private Shape circle(double mmX, double mmY, double radius) {
    return place().createTransformedShape(new Ellipse2D.Double(mmX - radius, mmY - radius, 2 * radius, 2 * radius));
  }

  private Shape line(double x1, double y1, double x2, double y2) {
    return place().createTransformedShape(new Line2D.Double(x1, y1, x2, y2));
  }

  /** One wall from the floor up; its top is a broken edge. */
  private Path2D wall(int side, double base, double top, double thickness, double height) {
    Path2D wall = new Path2D.Double();
    wall.moveTo(side * base / 2, 0);
    wall.lineTo(side * top / 2, height);
    if (thickness > 0) {
      double tooth = Math.min(12, height * 0.15);
      wall.lineTo(side * (top / 2 + thickness * 0.35), height - tooth);
      wall.lineTo(side * (top / 2 + thickness * 0.6), height - tooth * 0.3);
      wall.lineTo(side * (top / 2 + thickness), height - tooth * 1.5);
      wall.lineTo(side * (base / 2 + thickness), 0);
      wall.closePath();
    }
    wall.transform(place());
    return wall;
  }

  private AffineTransform place() {
    return new AffineTransform(scale, 0, 0, -scale, x, floor);
  }
}
