package daubline.charts;

import daubline.analysis.Origins;
import daubline.base.Material;
import daubline.base.Printed;
import daubline.base.Trail;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * One fire: temperatures above, blast below, then charges as ticks, taps and incidents, phases; elapsed time below, wall
 * time above. A line is broken where nothing was measured for longer than three usual intervals.
 */
final class RunFigure extends RowFigure {

  private static final double LEFT = 62;
  private static final double RIGHT = 84;
  private static final double TOP = 26;
  private static final double BOTTOM = 30;
  private static final double TEMPERATURES = 150;
  private static final double BLAST = 58;
  private static final double ROW = 14;
  private static final double GAP = 3;

  private final RunCourse course;
  private final double from;
  private final double until;

  RunFigure(String trial, RunCourse course) {
    super(caption(trial, course), height(course));
    this.course = course;
    double[] span = course.span();
    this.from = Math.floor(span[0] / 600) * 600;
    this.until = Math.ceil((span[1] + 60) / 600) * 600;
  }

  private static double height(RunCourse course) {
    return TOP + BOTTOM + (course.lines(true).isEmpty() ? 0 : TEMPERATURES) + BLAST * course.lines(false).size() + ROW * rows(course);
  }

  private static int rows(RunCourse course) {
    return course.charges().size() + (course.events().isEmpty() ? 0 : 1) + (course.phases().isEmpty() ? 0 : 1);
  }

  private static String caption(String trial, RunCourse course) {
    StringBuilder text = new StringBuilder("The fire of ").append(trial).append(" from its run log, by time since first light")
        .append(course.lit().isPresent() ? " (below) and wall time (above)" : "").append(". Ticks are charges");
    List<RunCourse.Mark> incidents = course.events().stream().filter(e -> e.kind().equals("incident")).toList();
    if (course.events().stream().anyMatch(e -> e.kind().equals("tap"))) {
      text.append("; triangles, slag taps");
    }
    text.append(incidents.isEmpty() ? "." : "; numbered rings, incidents: ");
    for (int i = 0; i < incidents.size(); i++) {
      text.append(i + 1).append(' ').append(incidents.get(i).text().replaceAll("[.\\s]+$", "")).append(i + 1 < incidents.size() ? "; " : ".");
    }
    return text.append(" Lines are broken where nothing was measured for longer than three usual intervals.").toString();
  }

  @Override
  public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
    Pen pen = new Pen(g, palette);
    double x = area.getX() + LEFT;
    double width = area.getWidth() - LEFT - RIGHT;
    double y = area.getY() + TOP;
    double end = area.getY() + height(area.getWidth()) - BOTTOM;
    times(pen, x, width, y, end);
    if (!course.lines(true).isEmpty()) {
      panel(pen, new Rectangle2D.Double(x, y, width, TEMPERATURES - 8), "Temperature (°C)", course.lines(true), 0);
      y += TEMPERATURES;
    }
    int number = course.lines(true).size();
    for (RunCourse.Line line : course.lines(false)) {
      String heading = line.variable().name() + " (" + line.variable().unit().symbol() + ")";
      panel(pen, new Rectangle2D.Double(x, y, width, BLAST - 8), heading, List.of(line), number++);
      y += BLAST;
    }
    for (Map.Entry<Material, List<RunCourse.Mark>> charges : course.charges().entrySet()) {
      charges(pen, charges.getKey(), charges.getValue(), x, width, y);
      y += ROW;
    }
    if (!course.events().isEmpty()) {
      events(pen, x, width, y);
      y += ROW;
    }
    if (!course.phases().isEmpty()) {
      phases(pen, x, width, y);
    }
  }

  private double at(double seconds, double x, double width) {
    return x + (seconds - from) / (until - from) * width;
  }

  private void times(Pen pen, double x, double width, double top, double end) {
    double step = List.of(600.0, 900.0, 1800.0, 3600.0, 7200.0, 10_800.0, 21_600.0, 86_400.0).stream()
        .filter(s -> (until - from) / s * 34 <= width).findFirst().orElse(604_800.0);
    for (double t = Math.ceil(from / step) * step; t <= until; t += step) {
      double p = at(t, x, width);
      pen.color(pen.palette().quiet()).line(0.25f).line(p, top, p, end);
      pen.color(pen.palette().ink()).line(Pen.THIN).line(p, end, p, end + 3).text(clock(t), p, end + 11, Pen.SMALL, Pen.At.CENTRE);
      if (course.lit().isPresent()) {
        pen.line(p, top - 3, p, top).text(clock(Math.floorMod(Math.round(course.lit().getAsDouble() + t), 86_400L)), p, top - 5, Pen.SMALL, Pen.At.CENTRE);
      }
    }
    pen.line(x, end, x + width, end).line(x, top, x + width, top);
    pen.text("time since first light (h:min)", x + width / 2, end + 23, Pen.NORMAL, Pen.At.CENTRE);
    if (course.lit().isPresent()) {
      pen.text("wall time", x + width / 2, top - 15, Pen.NORMAL, Pen.At.CENTRE);
    }
  }

  private static String clock(double seconds) {
    long minutes = Math.round(Math.abs(seconds) / 60);
    return (seconds < 0 ? "−" : "") + String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60);
  }

  private void panel(Pen pen, Rectangle2D frame, String heading, List<RunCourse.Line> lines, int firstSeries) {
    double low = lines.stream().flatMap(l -> l.points().stream()).mapToDouble(RunCourse.Point::value).min().orElse(0);
    double high = lines.stream().flatMap(l -> l.points().stream()).mapToDouble(RunCourse.Point::value).max().orElse(1);
    double step = Ticks.step(Math.max(high - Math.min(0, low), 1e-9), frame.getHeight() > 80 ? 6 : 3);
    double bottom = Math.floor(Math.min(0, low) / step) * step;
    double top = Math.max(bottom + step, Math.ceil(high * 1.02 / step) * step);
    pen.color(pen.palette().ink()).line(Pen.THIN).draw(frame);
    for (double v = bottom; v <= top + step / 2; v += step) {
      double y = frame.getMaxY() - (v - bottom) / (top - bottom) * frame.getHeight();
      pen.line(frame.getMinX() - 3, y, frame.getMinX(), y).text(Ticks.label(v, step), frame.getMinX() - 5, y + 2.5, Pen.SMALL, Pen.At.RIGHT);
    }
    heading(pen, frame, heading);
    List<Label> labels = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      double y = draw(pen, frame, lines.get(i), firstSeries + i, bottom, top);
      labels.add(new Label(lines.get(i).variable().name().replaceFirst("^Temperature,? (of the |at the )?", ""), firstSeries + i, y));
    }
    if (lines.size() > 1) {
      label(pen, frame, labels);
    }
  }

  private static void heading(Pen pen, Rectangle2D frame, String heading) {
    List<String> lines = Pen.wrap(heading, Pen.SMALL, Math.max(50, frame.getHeight()));
    double x = frame.getMinX() - 30 - (lines.size() - 1) * 8.5;
    for (int i = 0; i < lines.size(); i++) {
      pen.turned(lines.get(i), x + i * 8.5, frame.getCenterY(), Pen.SMALL, -90, Pen.At.CENTRE);
    }
  }

  private record Label(String text, int series, double y) {
  }

  /** Draws one line with its marks; returns the height at which it ends. */
  private double draw(Pen pen, Rectangle2D frame, RunCourse.Line line, int series, double bottom, double top) {
    List<RunCourse.Point> points = line.points();
    double gap = 3 * usualInterval(points);
    double y = frame.getMaxY();
    for (int i = 0; i < points.size(); i++) {
      double x = at(points.get(i).seconds(), frame.getX(), frame.getWidth());
      double next = frame.getMaxY() - (points.get(i).value() - bottom) / (top - bottom) * frame.getHeight();
      pen.color(pen.palette().color(series));
      if (i > 0 && points.get(i).seconds() - points.get(i - 1).seconds() <= gap) {
        BasicStroke stroke = pen.palette().stroke(series, Pen.THICK);
        pen.stroke(stroke).line(at(points.get(i - 1).seconds(), frame.getX(), frame.getWidth()), y, x, next);
      }
      y = next;
      Mark.of(series).draw(pen, x, y, 1.7);
      RunCourse.Point point = points.get(i);
      pen.spot(x, y, 3, () -> new Trail(line.variable().name() + " at " + clock(point.seconds()), Printed.number(point.value(), 4) + " " + line.variable().unit().symbol(), point.from().subject(),
          List.of(point.from())));
    }
    return y;
  }

  private static double usualInterval(List<RunCourse.Point> points) {
    List<Double> intervals = new ArrayList<>();
    for (int i = 1; i < points.size(); i++) {
      intervals.add(points.get(i).seconds() - points.get(i - 1).seconds());
    }
    intervals.sort(Comparator.naturalOrder());
    return intervals.isEmpty() ? 0 : intervals.get(intervals.size() / 2);
  }

  /** Names at the ends of the lines, pushed apart where they would overlap. */
  private static void label(Pen pen, Rectangle2D frame, List<Label> labels) {
    labels.sort(Comparator.comparingDouble(Label::y));
    double last = frame.getMinY() - 4;
    for (Label label : labels) {
      double y = Math.max(label.y() + 2.5, last + 8.5);
      pen.color(pen.palette().color(label.series()));
      Mark.of(label.series()).draw(pen, frame.getMaxX() + 6, y - 2.5, 1.7);
      pen.color(pen.palette().ink()).text(Pen.fit(label.text(), Pen.SMALL, RIGHT - 14), frame.getMaxX() + 11, y, Pen.SMALL, Pen.At.LEFT);
      last = y;
    }
  }

  private void charges(Pen pen, Material material, List<RunCourse.Mark> charges, double x, double width, double y) {
    name(pen, material.word(), x, y);
    pen.line(0.8f);
    for (RunCourse.Mark charge : charges) {
      double p = at(charge.seconds(), x, width);
      pen.line(p, y + GAP, p, y + ROW - GAP);
      pen.spot(new Rectangle2D.Double(p - 1.5, y + GAP, 3, ROW - 2 * GAP), () -> at(material.word(), charge));
    }
    double mass = charges.stream().mapToDouble(RunCourse.Mark::mass).filter(m -> !Double.isNaN(m)).sum();
    long unweighed = charges.stream().filter(c -> Double.isNaN(c.mass())).count();
    String sum = charges.size() + (charges.size() == 1 ? " charge" : " charges") + (mass > 0 ? ", " + Printed.fixed(mass, 1) + " kg" : "")
        + (unweighed > 0 ? ", " + unweighed + " not weighed" : "");
    pen.spot(new Rectangle2D.Double(x + width + 4, y + 2, RIGHT - 6, ROW - 3), () -> new Trail("All " + material.word() + " charged", sum, "", charges.stream().map(c -> Origins.entry(c.entry())).toList()));
    pen.text(Pen.fit(sum, Pen.SMALL, RIGHT - 8), x + width + 6, y + ROW - 4, Pen.SMALL, Pen.At.LEFT);
  }

  private static Trail at(String what, RunCourse.Mark mark) {
    return new Trail(what + " at " + clock(mark.seconds()), Double.isNaN(mark.mass()) ? mark.text() : Printed.number(mark.mass(), 4) + " kg", mark.entry().id(), List.of(Origins.entry(mark.entry())));
  }

  private static void name(Pen pen, String text, double x, double y) {
    pen.color(pen.palette().ink()).text(Pen.fit(text, Pen.SMALL, LEFT - 8), x - 5, y + ROW - 4, Pen.SMALL, Pen.At.RIGHT);
  }

  private void events(Pen pen, double x, double width, double y) {
    name(pen, "taps, incidents", x, y);
    int number = 0;
    for (RunCourse.Mark event : course.events()) {
      double p = at(event.seconds(), x, width);
      pen.color(pen.palette().ink());
      pen.spot(p, y + ROW / 2, 5, () -> at(event.kind(), event));
      if (event.kind().equals("tap")) {
        Mark.TRIANGLE.draw(pen, p, y + ROW / 2, 3);
      } else {
        Mark.RING.draw(pen, p, y + ROW / 2, 5);
        pen.text(Integer.toString(++number), p, y + ROW / 2 + 2.5, Pen.SMALL, Pen.At.CENTRE);
      }
    }
  }

  private void phases(Pen pen, double x, double width, double y) {
    name(pen, "phase", x, y);
    List<RunCourse.Mark> phases = course.phases().stream().sorted(Comparator.comparingDouble(RunCourse.Mark::seconds)).toList();
    for (int i = 0; i < phases.size(); i++) {
      double p = at(phases.get(i).seconds(), x, width);
      double next = i + 1 < phases.size() ? at(phases.get(i + 1).seconds(), x, width) : x + width + RIGHT;
      pen.color(pen.palette().ink()).line(Pen.THIN).line(p, y + 2, p, y + ROW - 2);
      if (next - p > 12) {
        pen.text(Pen.fit(phases.get(i).text().replaceAll("[.\\s]+$", ""), Pen.SMALL, next - p - 4), p + 2, y + ROW - 4, Pen.SMALL, Pen.At.LEFT);
      }
    }
  }
}
