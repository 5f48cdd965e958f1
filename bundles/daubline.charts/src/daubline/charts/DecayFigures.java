package daubline.charts;

import daubline.analysis.StudyResults;
import daubline.analysis.record.DecayCurve;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.engine.stats.DecayFit;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;

/** What is left of the wall of each furnace left to decay, visit after visit, with two simple laws through it. */
public final class DecayFigures implements FigureSpec {

  @Override
  public String id() {
    return "decay";
  }

  @Override
  public String table() {
    return "decay";
  }

  @Override
  public String title() {
    return "Decay of a Wall";
  }

  @Override
  public Optional<Figure> build(StudyResults results) {
    return all(results).stream().map(NamedFigure::figure).findFirst();
  }

  @Override
  public List<NamedFigure> all(StudyResults results) {
    return DecayCurve.of(results.snapshot()).stream()
        .map(c -> new NamedFigure(FileNames.of(id() + "-" + c.trial()), title() + ": " + c.name(), (Figure) new Drawing(c))).toList();
  }

  private record Drawing(DecayCurve curve) implements Figure {

    private static final int STEPS = 60;

    @Override
    public String caption() {
      return "Height of the standing wall of " + curve.name() + " at each visit since " + curve.points().get(0).on() + ", bars as wide as one standard uncertainty both ways. "
          + said("Solid line", curve.share(), "by the same share each year, ", 100, " % per year") + said("Dashed line", curve.amount(), "by the same height each year, ", 1000, " mm per year")
          + "Walls fall in steps; neither law is more than a summary of what was seen." + (curve.ended().isEmpty() ? "" : " The watching ended: " + curve.ended().replaceAll("[.\\s]+$", "") + ".");
    }

    private static String said(String line, Optional<DecayFit> fit, String law, double factor, String unit) {
      return fit.map(f -> line + ": " + law + Printed.number(factor * f.goes(f.rate()), 3) + unit + (Double.isFinite(f.low())
          ? " (95 % range " + Printed.number(factor * f.goes(f.low()), 3) + " to " + Printed.number(factor * f.goes(f.high()), 3) + ", " + f.observations() + " observations). "
          : " (two observations give no range). ")).orElse("");
    }

    @Override
    public double aspect() {
      return 0.62;
    }

    @Override
    public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
      Pen pen = new Pen(g, palette);
      Rectangle2D at = new Rectangle2D.Double(area.getX() + 44, area.getY() + 10, area.getWidth() - 60, area.getHeight() - 44);
      double last = curve.points().get(curve.points().size() - 1).years();
      double high = curve.points().stream().mapToDouble(p -> p.height().value() + spread(p)).max().orElse(1) * 1000;
      Axes axes = new Axes(pen, at, new double[] {0, last * 1.08}, new double[] {0, high * 1.1});
      axes.left("standing height (mm)").bottom("years since the first observation").frame();
      curve.share().ifPresent(f -> line(pen.color(palette.color(0)).line(1.1f), axes, f, last, high * 1.1));
      curve.amount().ifPresent(f -> line(pen.color(palette.color(1)).line(1.1f, 5, 3), axes, f, last, high * 1.1));
      for (DecayCurve.Point p : curve.points()) {
        double x = axes.x(p.years());
        pen.color(palette.ink()).line(0.8f).line(x, axes.y(1000 * (p.height().value() - spread(p))), x, axes.y(1000 * (p.height().value() + spread(p))));
        Mark.DISC.draw(pen, x, axes.y(1000 * p.height().value()), 2.8);
        pen.spot(x, axes.y(1000 * p.height().value()), 4, () -> Trail.entry("Standing height of " + curve.name() + " seen " + p.on(), Printed.number(1000 * p.height().value(), 4) + " mm", curve.trial()));
      }
    }

    private static double spread(DecayCurve.Point p) {
      return Double.isFinite(p.height().sigma()) ? p.height().sigma() : 0;
    }

    private static void line(Pen pen, Axes axes, DecayFit fit, double last, double top) {
      Path2D path = new Path2D.Double();
      boolean drawn = false;
      for (int i = 0; i <= STEPS; i++) {
        double years = last * i / STEPS;
        double height = 1000 * fit.at(years);
        if (height >= 0 && height <= top) {
          if (drawn) {
            path.lineTo(axes.x(years), axes.y(height));
          } else {
            path.moveTo(axes.x(years), axes.y(height));
          }
          drawn = true;
        }
      }
      if (drawn) {
        pen.draw(path);
      }
    }
  }
}
