package daubline.charts;

import daubline.analysis.Target;
import daubline.analysis.TrialData;
import daubline.base.Printed;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The section of what a trial left over the section of what it is compared with, to one scale, with the measures in a list
 * beside it. Solid up to the line of preservation; above it only what was built, dotted.
 */
public final class SideBySide implements Figure {

  private static final double HEAD = 14;
  private static final double FOOT = 34;
  private static final double MARGIN = 150;
  private static final double DRAWING = 0.56;
  private static final double ROW = 12;
  /** In less width the list stands below the drawing. */
  private static final double NARROW = 330;

  private final String sheet;
  private final String trial;
  private final Profile excavated;
  private final Profile found;
  private final Profile built;

  private SideBySide(TrialData trial, Target target) {
    this.sheet = target.sheet().name();
    this.trial = trial.name();
    this.excavated = Profile.found(target.sheet());
    this.found = Profile.found(trial.found());
    this.built = Profile.built(trial);
  }

  /** The drawing of a pair; empty for a group, which has no section of its own, or when either side gives no base diameter. */
  public static Optional<Figure> of(TrialData trial, Target target) {
    SideBySide drawing = new SideBySide(trial, target);
    boolean both = !target.isGroup() && drawing.excavated.isDrawable() && drawing.found.isDrawable();
    return both ? Optional.of(drawing) : Optional.empty();
  }

  @Override
  public String caption() {
    return "Section of the remains of " + trial + ", as found (dashed), over that of " + sheet + " (solid and hatched), to one scale, both on the middle of the "
        + "floor. Dash-dotted: the line to which the wall of " + sheet + " is preserved; dotted above it: what was built for the trial and is not evidenced by "
        + "these remains. Circles are air inlets. A height that is not stated is drawn as a stub.";
  }

  private double height() {
    return Math.max(Math.max(known(excavated.height()), known(found.height())), Math.max(known(built.height()), 80));
  }

  private double depth() {
    return Math.max(known(excavated.pit()), known(found.pit()));
  }

  private double width() {
    double top = known(built.top()) + 2 * built.wallOr(0);
    return Math.max(Math.max(excavated.outerDiameter(), found.outerDiameter()), top) + MARGIN;
  }

  private static double known(double value) {
    return value > 0 ? value : 0;
  }

  @Override
  public double aspect() {
    return height(500) / 500;
  }

  /** As high as the drawing is at the width it gets, within reason; the list needs its rows. */
  @Override
  public double height(double width) {
    double list = (lines().size() + 7) * ROW;
    double wanted = (height() + depth()) * width * drawing(width) / width() + HEAD + FOOT;
    return width < NARROW ? Math.min(wanted, 0.9 * width) + list : Math.clamp(wanted, Math.min(list, 1.3 * width), 1.3 * width);
  }

  /** The share of the width that the drawing gets. */
  private static double drawing(double width) {
    return width < NARROW ? 0.98 : DRAWING;
  }

  @Override
  public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
    Pen pen = new Pen(g, palette);
    boolean below = area.getWidth() < NARROW;
    double list = (lines().size() + 7) * ROW;
    double room = area.getHeight() - HEAD - FOOT - (below ? list : 0);
    double scale = Math.min(room / (height() + depth()), area.getWidth() * drawing(area.getWidth()) / width());
    double floor = area.getY() + HEAD + height() * scale;
    double middle = area.getX() + area.getWidth() * drawing(area.getWidth()) / 2;
    SectionDrawing drawing = new SectionDrawing(pen, middle, floor, scale);
    drawing.conjectured(built, excavated);
    drawing.excavated(excavated);
    drawing.trial(found);
    drawing.floor(excavated.outerDiameter() / 2 + 60);
    bar(pen, area, scale, area.getMaxY() - 9 - (below ? list : 0));
    double left = below ? 4 : area.getWidth() * (DRAWING + 0.02);
    list(pen, new Rectangle2D.Double(area.getX() + left, below ? area.getMaxY() - list + 8 : area.getY() + HEAD, area.getWidth() * 0.99 - left, list));
  }

  private static void bar(Pen pen, Rectangle2D area, double scale, double y) {
    double length = scale * 500 < area.getWidth() / 3 ? 500 : 200;
    double x = area.getX() + 8;
    pen.color(pen.palette().ink()).line(0.6f);
    for (int i = 0; i < 5; i++) {
      Rectangle2D part = new Rectangle2D.Double(x + i * length / 5 * scale, y, length / 5 * scale, 3.5);
      if (i % 2 == 0) {
        pen.fill(part);
      }
      pen.draw(part);
    }
    pen.text("0", x, y - 3, Pen.SMALL, Pen.At.CENTRE).text(Printed.number(length) + " mm", x + length * scale, y - 3, Pen.SMALL, Pen.At.CENTRE);
  }

  private record Line(String name, String measure, double excavated, double found, double built) {
  }

  private List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    lines.add(new Line("inside Ø", "diameter", excavated.diameter(), found.diameter(), built.diameter()));
    lines.add(new Line("wall", "wall", excavated.wall(), found.wall(), built.wall()));
    lines.add(new Line("height", "height", excavated.height(), found.height(), built.height()));
    lines.add(new Line("inlet up", "inlet", excavated.inlet(), found.inlet(), built.inlet()));
    lines.add(new Line("inlet bore", "bore", excavated.bore(), found.bore(), built.bore()));
    lines.add(new Line("pit", "pit", excavated.pit(), found.pit(), built.pit()));
    lines.removeIf(l -> Double.isNaN(l.excavated()) && Double.isNaN(l.found()) && Double.isNaN(l.built()));
    return lines;
  }

  /** Both names and the measures of all three, in millimetres. */
  private void list(Pen pen, Rectangle2D place) {
    double y = place.getY() + 4;
    double sample = 18;
    pen.color(pen.palette().ink()).line(Pen.THICK).line(place.getX(), y - 2.5, place.getX() + 14, y - 2.5);
    y = names(pen, sheet, place, sample, y);
    pen.color(pen.palette().color(1)).line(1.2f, 6, 2.5f).line(place.getX(), y - 2.5, place.getX() + 14, y - 2.5);
    y = names(pen, trial + ", as found", place, sample, y);
    pen.color(pen.palette().ink()).line(0.9f, 1, 2.2f).line(place.getX(), y - 2.5, place.getX() + 14, y - 2.5);
    y = names(pen, "built", place, sample, y) + 8;
    double[] at = {place.getX() + place.getWidth() * 0.58, place.getX() + place.getWidth() * 0.79, place.getMaxX()};
    String[] heads = {"dug up", "found", "built"};
    pen.color(pen.palette().quiet()).text("mm", place.getX(), y, Pen.SMALL, Pen.At.LEFT);
    for (int i = 0; i < heads.length; i++) {
      pen.text(heads[i], at[i], y, Pen.SMALL, Pen.At.RIGHT);
    }
    pen.line(0.4f).line(place.getX(), y + 3, place.getMaxX(), y + 3).color(pen.palette().ink());
    for (Line line : lines()) {
      y += ROW;
      pen.text(Pen.fit(line.name(), Pen.NORMAL, place.getWidth() * 0.4), place.getX(), y, Pen.NORMAL, Pen.At.LEFT);
      double[] values = {line.excavated(), line.found(), line.built()};
      Profile[] of = {excavated, found, built};
      for (int i = 0; i < values.length; i++) {
        if (!Double.isNaN(values[i])) {
          Profile profile = of[i];
          double value = values[i];
          pen.spot(new Rectangle2D.Double(at[i] - 30, y - 8, 32, ROW - 2), () -> profile.trail(line.measure(), value));
        }
        pen.text(Double.isNaN(values[i]) ? "–" : Printed.number(values[i], 3), at[i], y, Pen.NORMAL, Pen.At.RIGHT);
      }
    }
  }

  private static double names(Pen pen, String name, Rectangle2D place, double indent, double y) {
    pen.color(pen.palette().ink());
    return pen.lines(Pen.wrap(name, Pen.NORMAL, place.getWidth() - indent), place.getX() + indent, y, Pen.NORMAL, Pen.At.LEFT) + 2;
  }
}
