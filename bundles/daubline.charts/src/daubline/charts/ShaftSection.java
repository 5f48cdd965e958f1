package daubline.charts;

import daubline.analysis.Origins;
import daubline.analysis.forecast.FurnaceShape;
import daubline.analysis.forecast.TrialForecast;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.base.Units;
import daubline.engine.process.BurnForecast;
import daubline.engine.process.BurnQuantity;
import daubline.engine.process.shaft.ShaftParameter;
import daubline.engine.process.shaft.ShaftSolution;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The section of a furnace to scale, and beside it at the same heights what the shaft model says of temperature and gas.
 * Below the line of preservation curves and walls are solid, above it dotted: there nothing is evidenced.
 */
public final class ShaftSection implements Figure {

  private static final double MM = 1000;
  private static final double HOTTEST = 1800;
  private static final double HEAD = 26;
  private static final double FOOT = 28;
  /** Share of the width that the furnace gets, and millimetres left free beside it. */
  private static final double DRAWING = 0.42;
  private static final double MARGIN = 160;

  private final String caption;
  private final Profile built;
  private final Profile found;
  private final double inlet;
  private final BurnForecast forecast;
  private final TrialForecast trial;
  private final double level;

  private ShaftSection(TrialForecast trial, BurnForecast forecast) {
    FurnaceShape shape = trial.plan().shape();
    this.forecast = forecast;
    this.trial = trial;
    Map<String, Trail> from = Map.of("", new Trail("What " + trial.name() + " rests on", "", trial.trial(), trial.used()));
    double hearth = forecast.shaft().inputs().get(ShaftParameter.HEARTH) * MM;
    double stack = forecast.shaft().inputs().get(ShaftParameter.STACK) * MM;
    this.inlet = shape.inlet() > 0 ? shape.inlet() * MM : hearth;
    double height = shape.height() > 0 && shape.height() * MM > inlet ? shape.height() * MM : inlet + stack;
    double diameter = forecast.shaft().inputs().get(ShaftParameter.DIAMETER) * MM;
    this.built = new Profile(diameter, shape.wall() * MM, height, shape.top() * MM, inlet, shape.bore() * MM, shape.pit() * MM, from);
    this.found = new Profile(diameter, shape.wall() * MM, Math.min(height, shape.preserved() * MM), Double.NaN, inlet, shape.bore() * MM, shape.pit() * MM, from);
    double share = forecast.get(BurnQuantity.DURATION).central() / forecast.get(BurnQuantity.BLOCKING).central();
    double pit = trial.plan().inputs().map(in -> in.slagRoom().pit()).orElse(0.0) / (Math.PI * diameter * diameter / 4) * MM * MM * MM;
    double filled = Double.isFinite(share) ? Math.min(1, share) * (inlet + pit) - pit : 0;
    this.level = filled >= 0 || pit <= 0 ? filled : filled / pit * shape.pit() * MM;
    this.caption = "Furnace of " + trial.name() + " to scale, with temperatures and gas at each height by the shaft model (explains, not validated for "
        + "yield). Solid up to the line to which there is evidence"
        + (shape.evidence().isEmpty() ? "; no sheet says how high, so that line is a stub" : " (" + shape.evidence() + ")")
        + ", dotted above it. Hatched: where slag and bloom stand at the end of charging. The circle is the air inlet.";
  }

  /** The section of a trial; empty without a forecast. */
  public static Optional<Figure> of(TrialForecast trial) {
    return trial.forecast().map(f -> new ShaftSection(trial, f));
  }

  @Override
  public String caption() {
    return caption;
  }

  @Override
  public double aspect() {
    return height(1000) / 1000;
  }

  /** As high as the furnace is at the width it gets, within reason. */
  @Override
  public double height(double width) {
    double wanted = (built.height() + pit()) * width * DRAWING / (built.outerDiameter() + MARGIN) + HEAD + FOOT;
    return Math.clamp(wanted, 0.45 * width, 1.15 * width);
  }

  private double pit() {
    return built.pit() > 0 ? built.pit() : 0;
  }

  @Override
  public double widthMm() {
    return 150;
  }

  @Override
  public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
    Pen pen = new Pen(g, palette);
    double scale = Math.min((area.getHeight() - HEAD - FOOT) / (built.height() + pit()), area.getWidth() * DRAWING / (built.outerDiameter() + MARGIN));
    double floor = area.getY() + HEAD + built.height() * scale;
    double top = floor - built.height() * scale;
    double middle = area.getX() + area.getWidth() * 0.21;
    slag(pen, middle, floor, scale);
    SectionDrawing drawing = new SectionDrawing(pen, middle, floor, scale);
    drawing.conjectured(built, found);
    drawing.excavated(found);
    drawing.floor(built.outerDiameter() / 2 + 50);
    pen.spot(middle, floor + Math.max(pit() * scale + 10, 19), 40, () -> built.trail("diameter", built.diameter()));
    pen.color(palette.ink()).text("Ø " + Printed.number(built.diameter(), 3) + " mm, " + Printed.number(built.height(), 3) + " mm high", middle,
        floor + Math.max(pit() * scale + 12, 21), Pen.SMALL, Pen.At.CENTRE);
    double left = area.getX() + area.getWidth() * 0.47;
    Rectangle2D heat = new Rectangle2D.Double(left, top, area.getWidth() * 0.30, floor - top);
    Rectangle2D gas = new Rectangle2D.Double(left + area.getWidth() * 0.35, top, area.getWidth() * 0.145, floor - top);
    heights(pen, heat, floor, scale);
    panel(pen, heat, "°C", HOTTEST, 600);
    panel(pen, gas, "% CO", 100, 50);
    pen.text("heat", heat.getX(), top - 14, Pen.NORMAL, Pen.At.LEFT).text("CO/(CO+CO2)", gas.getX() - 8, top - 14, Pen.NORMAL, Pen.At.LEFT);
    curves(pen, heat, gas, floor, scale);
  }

  /** Where slag and bloom stand at the end of charging. */
  private void slag(Pen pen, double middle, double floor, double scale) {
    double half = built.diameter() / 2 * scale;
    double pit = pit() * scale;
    Path2D inside = new Path2D.Double();
    inside.moveTo(middle - half, floor - inlet * scale);
    inside.lineTo(middle - half, floor);
    inside.curveTo(middle - half, floor + pit * 1.3, middle + half, floor + pit * 1.3, middle + half, floor);
    inside.lineTo(middle + half, floor - inlet * scale);
    inside.closePath();
    Area pool = new Area(inside);
    pool.intersect(new Area(new Rectangle2D.Double(middle - half, floor - level * scale, 2 * half, Math.max(0, level * scale + 2 * pit + 1))));
    pen.spot(pool, () -> Trail.reckoned("Slag and bloom at the end of charging, " + trial.name(), Printed.number(level, 3) + " mm above the floor", "room below the inlet filled by the slag forecast", Origins.used(trial.plan())));
    pen.color(pen.palette().color(1)).line(0.5f).hatch(pool, 3, 2.4).line(0.7f).draw(pool).color(pen.palette().ink());
  }

  private void heights(Pen pen, Rectangle2D field, double floor, double scale) {
    double step = built.height() > 600 ? 200 : 100;
    for (double h = 0; h <= built.height(); h += step) {
      double at = floor - h * scale;
      pen.color(pen.palette().quiet()).line(0.25f).line(field.getX(), at, field.getMaxX(), at);
      pen.color(pen.palette().ink()).text(Printed.number(h / 10) + " cm", field.getX() - 3, at + 2.5, Pen.SMALL, Pen.At.RIGHT);
    }
    double at = floor - inlet * scale;
    pen.line(0.6f, 1.5f, 2).line(field.getX() - 22, at, field.getMaxX(), at);
  }

  private static void panel(Pen pen, Rectangle2D field, String unit, double high, double step) {
    pen.color(pen.palette().ink()).line(Pen.THIN).draw(field);
    for (double v = 0; v <= high; v += step) {
      double at = field.getX() + v / high * field.getWidth();
      pen.line(at, field.getMaxY(), at, field.getMaxY() + 3).text(Printed.number(v), at, field.getMaxY() + 11, Pen.SMALL, Pen.At.CENTRE);
    }
    pen.text(unit, field.getCenterX(), field.getMaxY() + 21, Pen.SMALL, Pen.At.CENTRE);
  }

  private void curves(Pen pen, Rectangle2D heat, Rectangle2D gas, double floor, double scale) {
    List<ShaftSolution.Level> profile = forecast.shaft().profile();
    if (profile.isEmpty()) {
      List<String> lines = Pen.wrap("no steady hot shaft", Pen.SMALL, heat.getWidth() - 8);
      pen.color(pen.palette().ink()).lines(lines, heat.getCenterX(), heat.getCenterY(), Pen.SMALL, Pen.At.CENTRE);
      return;
    }
    double liquid = forecast.get(BurnQuantity.SLAG_LIQUIDUS).central();
    if (liquid > 0 && liquid < HOTTEST) {
      double at = heat.getX() + liquid / HOTTEST * heat.getWidth();
      pen.color(pen.palette().color(1)).line(0.7f, 8, 2, 2, 2).line(at, heat.getY(), at, heat.getMaxY());
      pen.spot(new Rectangle2D.Double(at - 1.5, heat.getY(), 3, heat.getHeight()), () -> Origins.forecast(trial, BurnQuantity.SLAG_LIQUIDUS, Printed.number(liquid, 4) + " °C"));
      pen.textOnPaper("slag liquid", at, heat.getY() - 3, Pen.SMALL, Pen.At.CENTRE);
    }
    curve(pen, 0, 1.5f, heat, HOTTEST, l -> l.solid() - Units.ZERO_CELSIUS, floor, scale, "charge");
    curve(pen, 2, 0.9f, heat, HOTTEST, l -> l.gas() - Units.ZERO_CELSIUS, floor, scale, "gas");
    curve(pen, 0, 1.2f, gas, 100, l -> 100 * l.coShare(), floor, scale, "");
  }

  /** A point of a curve: the shaft model's, at its height. */
  private Trail level(ShaftSolution.Level l, double high, ToDoubleFunction<ShaftSolution.Level> value) {
    String unit = high > 100 ? " °C" : " % CO of CO + CO₂";
    return Trail.reckoned(trial.name() + ", " + Printed.number((inlet + l.height() * MM) / 10, 3) + " cm above the floor", Printed.number(value.applyAsDouble(l), 3) + unit,
        "shaft model: explains, not validated for yield", Origins.used(trial.plan()));
  }

  /** One curve: solid where there is evidence of the wall, dotted above. */
  private void curve(Pen pen, int color, float width, Rectangle2D field, double high, ToDoubleFunction<ShaftSolution.Level> value, double floor,
      double scale, String name) {
    Path2D solid = new Path2D.Double();
    Path2D dotted = new Path2D.Double();
    double known = found.height() > 0 ? found.height() : 0;
    double lastX = Double.NaN;
    double lastY = Double.NaN;
    for (ShaftSolution.Level l : forecast.shaft().profile()) {
      double h = Math.min(built.height(), inlet + l.height() * MM);
      double atX = field.getX() + Math.clamp(value.applyAsDouble(l) / high, 0, 1) * field.getWidth();
      double atY = floor - h * scale;
      Path2D path = h <= known ? solid : dotted;
      if (path.getCurrentPoint() == null) {
        path.moveTo(Double.isNaN(lastX) ? atX : lastX, Double.isNaN(lastY) ? atY : lastY);
      }
      path.lineTo(atX, atY);
      pen.spot(atX, atY, 2, () -> level(l, high, value));
      lastX = atX;
      lastY = atY;
    }
    pen.color(pen.palette().color(color)).line(width).draw(solid);
    pen.stroke(new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 10, new float[] {0.1f, 2.8f}, 0)).draw(dotted);
    ShaftSolution.Level named = forecast.shaft().profile().get(forecast.shaft().profile().size() / (name.equals("gas") ? 4 : 2));
    double atX = field.getX() + Math.clamp(value.applyAsDouble(named) / high, 0, 1) * field.getWidth();
    boolean right = name.equals("gas");
    pen.textOnPaper(name, right ? atX + 4 : atX - 4, floor - (inlet + named.height() * MM) * scale, Pen.SMALL, right ? Pen.At.LEFT : Pen.At.RIGHT);
  }
}
