package daubline.charts;

import daubline.base.Trail;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** Points and lines between two axes, told apart by mark and dash as well as by colour. The plot itself cannot be changed. */
public final class Plot implements Figure {

  private static final double RADIUS = 2.8;
  private static final double ROW = 11;

  /** How a series is drawn. */
  public enum Style {
    /** A mark at each point, with whiskers where the point has an interval. */
    MARKS,
    /** A line through the points, solid for the first series and dashed for the next. */
    LINE,
    /** A dotted line: what is not evidenced. */
    DOTTED,
    /** Hatched between the intervals of the points. */
    BAND
  }

  /**
   * A point, with intervals where they are known (NaN where not).
   *
   * @param label a short text beside it, or empty
   * @param from where it comes from; null where the figure as a whole says so
   */
  public record Point(double x, double y, double xLow, double xHigh, double yLow, double yHigh, String label, Supplier<Trail> from) {

    /** A point of which nobody asks where it comes from. */
    public Point(double x, double y, double xLow, double xHigh, double yLow, double yHigh, String label) {
      this(x, y, xLow, xHigh, yLow, yHigh, label, null);
    }

    /** The same with where it comes from. */
    public Point from(Supplier<Trail> origin) {
      return new Point(x, y, xLow, xHigh, yLow, yHigh, label, origin);
    }

    /** A point without intervals. */
    public static Point of(double x, double y) {
      return new Point(x, y, Double.NaN, Double.NaN, Double.NaN, Double.NaN, "");
    }

    /** A point with an interval up and down. */
    public static Point of(double x, double y, double low, double high, String label) {
      return new Point(x, y, Double.NaN, Double.NaN, low, high, label);
    }
  }

  /**
   * Points that belong together.
   *
   * @param name what the key calls them; empty for nothing in the key
   */
  public record Series(String name, Style style, List<Point> points) {
    public Series {
      points = List.copyOf(points);
    }
  }

  /**
   * A line across the plot.
   *
   * @param label lettered on it
   * @param value where it crosses the axis
   * @param upright whether it stands at a value of x rather than lies at a value of y
   */
  public record Rule(String label, double value, boolean upright) {
  }

  private final String caption;
  private final Axis x;
  private final Axis y;
  private final List<Series> series;
  private final List<Rule> rules;
  private final boolean diagonal;
  private final double aspect;

  private Plot(String caption, Axis x, Axis y, List<Series> series, List<Rule> rules, boolean diagonal, double aspect) {
    this.caption = caption;
    this.x = x;
    this.y = y;
    this.series = List.copyOf(series);
    this.rules = List.copyOf(rules);
    this.diagonal = diagonal;
    this.aspect = aspect;
  }

  /** A plot of series between two axes. */
  public static Plot of(String caption, Axis x, Axis y, List<Series> series) {
    return new Plot(caption, x, y, series, List.of(), false, 0.72);
  }

  /** The same with the line on which both axes say the same, for what is predicted against what is observed. */
  public Plot withDiagonal() {
    return new Plot(caption, x, y, series, rules, true, 0.92);
  }

  /** The same with one more line across. */
  public Plot with(Rule rule) {
    List<Rule> all = new ArrayList<>(rules);
    all.add(rule);
    return new Plot(caption, x, y, series, all, diagonal, aspect);
  }

  /** The same with another height over width. */
  public Plot shaped(double heightOverWidth) {
    return new Plot(caption, x, y, series, rules, diagonal, heightOverWidth);
  }

  @Override
  public String caption() {
    return caption;
  }

  @Override
  public double aspect() {
    return aspect;
  }

  @Override
  public double widthMm() {
    return 120;
  }

  @Override
  public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
    Pen pen = new Pen(g, palette);
    long named = series.stream().filter(s -> !s.name().isEmpty()).count();
    double key = key(pen, area, named);
    double left = y.ticks().stream().mapToDouble(t -> Pen.width(Axis.text(t), Pen.SMALL)).max().orElse(0) + 20;
    Rectangle2D field = new Rectangle2D.Double(area.getX() + left, area.getY() + key + 4, Math.max(20, area.getWidth() - left - 8),
        Math.max(20, area.getHeight() - key - 34));
    axes(pen, field, area);
    references(pen, field);
    for (int i = 0; i < series.size(); i++) {
      draw(pen, field, i);
    }
  }

  private double px(double value, Rectangle2D field) {
    return field.getX() + x.share(x.clamped(value)) * field.getWidth();
  }

  private double py(double value, Rectangle2D field) {
    return field.getMaxY() - y.share(y.clamped(value)) * field.getHeight();
  }

  private void axes(Pen pen, Rectangle2D field, Rectangle2D area) {
    for (double tick : y.ticks()) {
      double at = py(tick, field);
      pen.color(pen.palette().quiet()).line(0.25f).line(field.getX(), at, field.getMaxX(), at);
      pen.color(pen.palette().ink()).text(Axis.text(tick), field.getX() - 3, at + 2.5, Pen.SMALL, Pen.At.RIGHT);
    }
    double free = Double.NEGATIVE_INFINITY;
    for (double tick : x.ticks()) {
      double at = px(tick, field);
      pen.color(pen.palette().quiet()).line(0.25f).line(at, field.getY(), at, field.getMaxY());
      double half = Pen.width(Axis.text(tick), Pen.SMALL) / 2;
      if (at - half > free) {
        pen.color(pen.palette().ink()).text(Axis.text(tick), at, field.getMaxY() + 9, Pen.SMALL, Pen.At.CENTRE);
        free = at + half + 3;
      }
    }
    pen.color(pen.palette().ink()).line(Pen.THIN).draw(field);
    pen.text(Pen.fit(x.label(), Pen.NORMAL, field.getWidth()), field.getCenterX(), field.getMaxY() + 22, Pen.NORMAL, Pen.At.CENTRE);
    pen.turned(Pen.fit(y.label(), Pen.NORMAL, field.getHeight()), area.getX() + 9, field.getCenterY(), Pen.NORMAL, -90, Pen.At.CENTRE);
  }

  private void references(Pen pen, Rectangle2D field) {
    pen.color(pen.palette().ink());
    if (diagonal) {
      double low = Math.max(x.low(), y.low());
      double high = Math.min(x.high(), y.high());
      pen.line(0.7f, 3, 2).line(px(low, field), py(low, field), px(high, field), py(high, field));
    }
    for (Rule rule : rules) {
      pen.line(0.8f, 8, 2, 2, 2);
      if (rule.upright() && x.holds(rule.value())) {
        double at = px(rule.value(), field);
        pen.line(at, field.getY(), at, field.getMaxY());
        boolean late = at > field.getCenterX();
        pen.textOnPaper(rule.label(), late ? at - 3 : at + 3, field.getY() + 10, Pen.SMALL, late ? Pen.At.RIGHT : Pen.At.LEFT);
      } else if (!rule.upright() && y.holds(rule.value())) {
        double at = py(rule.value(), field);
        pen.line(field.getX(), at, field.getMaxX(), at);
        pen.textOnPaper(rule.label(), field.getMaxX() - 4, at - 3, Pen.SMALL, Pen.At.RIGHT);
      }
    }
  }

  private void draw(Pen pen, Rectangle2D field, int number) {
    Series s = series.get(number);
    List<Point> points = s.points().stream().filter(p -> x.holds(p.x())).toList();
    if (s.style() != Style.BAND) {
      points.stream().filter(p -> p.from() != null && y.holds(p.y())).forEach(p -> pen.spot(px(p.x(), field), py(p.y(), field), RADIUS + 1, p.from()));
    }
    pen.color(pen.palette().color(number));
    switch (s.style()) {
      case MARKS -> points.stream().filter(p -> y.holds(p.y())).forEach(p -> mark(pen, field, number, p));
      case LINE -> pen.stroke(pen.palette().stroke(number, Pen.THICK)).draw(path(points, field));
      case DOTTED -> pen.stroke(new BasicStroke(Pen.THICK, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 10, new float[] {0.1f, 2.8f}, 0))
          .draw(path(points, field));
      case BAND -> band(pen, field, number, points);
    }
  }

  private void mark(Pen pen, Rectangle2D field, int number, Point p) {
    double atX = px(p.x(), field);
    double atY = py(p.y(), field);
    pen.color(pen.palette().color(number)).line(0.8f);
    if (!Double.isNaN(p.yLow())) {
      pen.line(atX, py(p.yLow(), field), atX, py(p.yHigh(), field));
    }
    if (!Double.isNaN(p.xLow())) {
      pen.line(px(p.xLow(), field), atY, px(p.xHigh(), field), atY);
    }
    Mark.of(number).draw(pen, atX, atY, RADIUS);
    boolean late = atX > field.getX() + 0.7 * field.getWidth();
    pen.color(pen.palette().ink()).text(p.label(), late ? atX - 5 : atX + 5, atY - 3, Pen.SMALL, late ? Pen.At.RIGHT : Pen.At.LEFT);
  }

  private Path2D path(List<Point> points, Rectangle2D field) {
    Path2D path = new Path2D.Double();
    for (Point p : points) {
      if (path.getCurrentPoint() == null) {
        path.moveTo(px(p.x(), field), py(p.y(), field));
      } else {
        path.lineTo(px(p.x(), field), py(p.y(), field));
      }
    }
    return path;
  }

  private void band(Pen pen, Rectangle2D field, int number, List<Point> points) {
    Path2D path = new Path2D.Double();
    for (Point p : points) {
      if (path.getCurrentPoint() == null) {
        path.moveTo(px(p.x(), field), py(p.yHigh(), field));
      } else {
        path.lineTo(px(p.x(), field), py(p.yHigh(), field));
      }
    }
    points.reversed().forEach(p -> path.lineTo(px(p.x(), field), py(p.yLow(), field)));
    if (path.getCurrentPoint() != null) {
      path.closePath();
      pen.color(pen.palette().quiet()).line(0.35f).hatch(path, 1 + number % 2, 3).line(0.4f).draw(path);
    }
  }

  /** The key above the plot, broken into lines; returns the room it took. */
  private double key(Pen pen, Rectangle2D area, long named) {
    if (named == 0) {
      return 0;
    }
    double atX = area.getX() + 4;
    double atY = area.getY() + 8;
    for (int i = 0; i < series.size(); i++) {
      Series s = series.get(i);
      if (!s.name().isEmpty()) {
        double wide = 22 + Pen.width(s.name(), Pen.SMALL) + 8;
        if (atX + wide > area.getMaxX() && atX > area.getX() + 4) {
          atX = area.getX() + 4;
          atY += ROW;
        }
        sample(pen, i, atX, atY - 2.5);
        pen.color(pen.palette().ink()).text(Pen.fit(s.name(), Pen.SMALL, area.getMaxX() - atX - 24), atX + 20, atY, Pen.SMALL, Pen.At.LEFT);
        atX += wide;
      }
    }
    return atY - area.getY() + 4;
  }

  private void sample(Pen pen, int number, double atX, double atY) {
    pen.color(pen.palette().color(number));
    switch (series.get(number).style()) {
      case MARKS -> Mark.of(number).draw(pen, atX + 9, atY, RADIUS);
      case LINE -> pen.stroke(pen.palette().stroke(number, Pen.THICK)).line(atX, atY, atX + 17, atY);
      case DOTTED -> pen.stroke(new BasicStroke(Pen.THICK, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 10, new float[] {0.1f, 2.8f}, 0))
          .line(atX, atY, atX + 17, atY);
      case BAND -> {
        Rectangle2D box = new Rectangle2D.Double(atX, atY - 3.5, 17, 7);
        pen.color(pen.palette().quiet()).line(0.35f).hatch(box, 1 + number % 2, 3).line(0.4f).draw(box);
      }
    }
  }
}
