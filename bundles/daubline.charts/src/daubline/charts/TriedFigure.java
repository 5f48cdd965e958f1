package daubline.charts;

import daubline.analysis.Origins;
import daubline.analysis.StudyResults;
import daubline.analysis.StudySnapshot;
import daubline.analysis.TriedVariable;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.base.Unit;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What has been tried and what not: for each variable that can be chosen the settings burnt, and the widest stretch without any. */
final class TriedFigure implements FigureSpec {

  private static final int ROOM = 32;
  private static final int KNOWN = 8;
  private static final double ROW = 20.5;
  private static final double HEAD = 14;
  private static final double KEY = 22;

  @Override
  public String id() {
    return "tried";
  }

  @Override
  public String table() {
    return "dimensions";
  }

  @Override
  public String title() {
    return "What Has Been Tried";
  }

  @Override
  public Optional<Figure> build(StudyResults results) {
    List<TriedVariable> all = TriedVariable.of(results.snapshot());
    List<TriedVariable> known = all.stream().filter(TriedVariable::isEvidenced).toList();
    List<TriedVariable> unknown = all.stream().filter(v -> !v.isEvidenced()).toList();
    List<TriedVariable> drawn = new ArrayList<>(unknown.subList(0, Math.min(unknown.size(), ROOM - Math.min(KNOWN, known.size()))));
    drawn.addAll(known.subList(0, Math.min(known.size(), ROOM - drawn.size())));
    return all.isEmpty() ? Optional.empty() : Optional.of(new Drawing(results.snapshot(), drawn, all.size() - drawn.size()));
  }

  private static final class Drawing extends RowFigure {

    private final List<TriedVariable> variables;
    private final StudySnapshot study;

    Drawing(StudySnapshot study, List<TriedVariable> variables, int leftOut) {
      super("What has been tried of each variable that can be chosen, those first for which no evidence sheet gives a number: the line runs over the plausible range and "
          + "everything tried, by factors where that spans six or more; discs, settings of burnt trials; rings, planned and not burnt; hatched, from the lowest to the highest number that evidence sheets give; "
          + "bracket below the line, the widest stretch in which nothing was burnt. Of words, a disc was burnt and a ring was not; the number counts the trials."
          + (leftOut == 0 ? "" : " " + leftOut + " more variables are not drawn."), variables.size() * ROW + 2 * HEAD + KEY);
      this.variables = variables;
      this.study = study;
    }

    @Override
    public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
      Pen pen = new Pen(g, palette);
      double left = area.getX() + area.getWidth() * 0.3;
      double right = area.getX() + area.getWidth() * 0.76;
      double y = area.getY();
      boolean evidenced = true;
      for (TriedVariable v : variables) {
        if (y == area.getY() || v.isEvidenced() != evidenced) {
          evidenced = v.isEvidenced();
          pen.color(palette.ink()).text(evidenced ? "evidence sheets give a number" : "no evidence sheet gives a number", area.getX(), y + 9, Pen.NORMAL, Pen.At.LEFT);
          pen.color(palette.quiet()).line(0.4f).line(area.getX(), y + 12, area.getMaxX(), y + 12);
          y += HEAD;
        }
        row(pen, v, new Rectangle2D.Double(left, y, right - left, ROW), area);
        y += ROW;
      }
      key(pen, area.getX() + 4, y + KEY - 8);
    }

    private void row(Pen pen, TriedVariable v, Rectangle2D strip, Rectangle2D area) {
      Unit unit = v.variable().unit();
      String name = v.variable().name() + (v.numbers().isEmpty() || unit.symbol().isEmpty() ? "" : " (" + unit.symbol() + ")");
      pen.color(pen.palette().ink()).text(Pen.fit(name, Pen.NORMAL, strip.getX() - area.getX() - 8), strip.getX() - 8, strip.getY() + 12, Pen.NORMAL, Pen.At.RIGHT);
      if (v.numbers().isEmpty()) {
        words(pen, v, strip, area.getMaxX());
      } else {
        numbers(pen, v, strip, area.getMaxX());
      }
    }

    private void numbers(Pen pen, TriedVariable v, Rectangle2D strip, double end) {
      double[] scale = v.scale();
      double y = strip.getY() + 9;
      double[] evidence = v.evidence();
      if (evidence.length > 0) {
        double from = x(strip, v, evidence[0]);
        Rectangle2D band = new Rectangle2D.Double(from - 1.5, y - 5, Math.max(3, x(strip, v, evidence[1]) - from + 3), 10);
        pen.color(pen.palette().quiet()).line(0.35f).hatch(band, 1, 2.4).line(0.4f).draw(band);
      }
      pen.color(pen.palette().ink()).line(0.7f).line(strip.getX(), y, strip.getMaxX(), y);
      v.planned().forEach(p -> Mark.RING.draw(pen.color(pen.palette().color(1)), x(strip, v, p), y, 3));
      v.settings().forEach(p -> pen.spot(x(strip, v, p), y, 4, () -> tried(v, text(v.variable().unit(), p), v.numbers().entrySet().stream().filter(e -> e.getValue().equals(p)).map(Map.Entry::getKey))));
      pen.spot(new Rectangle2D.Double(strip.getX(), strip.getY(), end - strip.getX(), ROW - 2), () -> tried(v, count(v.numbers().size(), v.settings().size()), v.numbers().keySet().stream()));
      v.settings().forEach(p -> Mark.DISC.draw(pen.color(pen.palette().color(2)), x(strip, v, p), y, 3));
      Unit unit = v.variable().unit();
      pen.color(pen.palette().ink()).text(text(unit, scale[0]), strip.getX(), y + 12, Pen.SMALL, Pen.At.LEFT)
          .text(text(unit, scale[1]), strip.getMaxX(), y + 12, Pen.SMALL, Pen.At.RIGHT);
      double[] gap = v.widestGap();
      if (gap[1] > gap[0]) {
        bracket(pen, x(strip, v, gap[0]), x(strip, v, gap[1]), y + 5);
      }
      pen.color(pen.palette().ink()).text(count(v.numbers().size(), v.settings().size()), strip.getMaxX() + 8, y, Pen.SMALL, Pen.At.LEFT);
      String none = gap[1] > gap[0] ? "none " + text(unit, gap[0]) + "–" + text(unit, gap[1]) : "";
      pen.text(Pen.fit(none, Pen.SMALL, end - strip.getMaxX() - 10), strip.getMaxX() + 8, y + 9, Pen.SMALL, Pen.At.LEFT);
    }

    /** A setting leads to what is stated of it in each trial that had it, the whole row to all of them. */
    private Trail tried(TriedVariable v, String value, Stream<String> trials) {
      List<Trail> from = trials.flatMap(id -> study.trial(id).stream()).map(t -> new Trail(t.name(), "", t.id(), Origins.of(study, t, v.variable().id()))).toList();
      return new Trail(v.variable().name() + " as tried", value + (v.numbers().isEmpty() || value.contains(" ") ? "" : " " + v.variable().unit().symbol()), "", from);
    }

    private static String count(int trials, int settings) {
      return trials + (trials == 1 ? " trial, " : " trials, ") + settings + (settings == 1 ? " setting" : " settings");
    }

    private static void bracket(Pen pen, double from, double to, double y) {
      pen.color(pen.palette().ink()).line(0.6f).line(from + 1, y, to - 1, y).line(from + 1, y - 2.5, from + 1, y).line(to - 1, y - 2.5, to - 1, y);
    }

    private static double x(Rectangle2D strip, TriedVariable v, double value) {
      return strip.getX() + v.share(value) * strip.getWidth();
    }

    private static String text(Unit unit, double value) {
      return Printed.number(unit.fromCanonical(value), 3);
    }

    /** The words burnt with their number of trials, then those that were not, as far as there is room. */
    private void words(Pen pen, TriedVariable v, Rectangle2D strip, double end) {
      double at = strip.getX() + 3;
      double y = strip.getY() + 9;
      double line = y;
      List<String> tried = v.words().values().stream().distinct().sorted().toList();
      for (String word : tried) {
        long trials = v.words().values().stream().filter(word::equals).count();
        String text = word + " " + trials;
        if (at + Pen.width(text, Pen.SMALL) + 10 > strip.getMaxX() && line == y) {
          at = strip.getX() + 3;
          line = y + 9;
        }
        pen.spot(at, line - 2.5, 4, () -> tried(v, text, v.words().entrySet().stream().filter(e -> e.getValue().equals(word)).map(Map.Entry::getKey)));
        Mark.DISC.draw(pen.color(pen.palette().color(2)), at, line - 2.5, 2.8);
        pen.color(pen.palette().ink()).text(text, at + 6, line, Pen.SMALL, Pen.At.LEFT);
        at += Pen.width(text, Pen.SMALL) + 16;
      }
      for (String word : v.untriedWords()) {
        if (at + Pen.width(word, Pen.SMALL) + 10 > strip.getMaxX() && line == y) {
          at = strip.getX() + 3;
          line = y + 9;
        }
        if (at + Pen.width(word, Pen.SMALL) + 10 <= strip.getMaxX()) {
          Mark.RING.draw(pen.color(pen.palette().quiet()), at, line - 2.5, 2.8);
          pen.color(pen.palette().ink()).text(word, at + 6, line, Pen.SMALL, Pen.At.LEFT);
          at += Pen.width(word, Pen.SMALL) + 16;
        }
      }
      pen.spot(new Rectangle2D.Double(strip.getX(), strip.getY(), end - strip.getX(), ROW - 2), () -> tried(v, count(v.words().size(), tried.size()), v.words().keySet().stream()));
      pen.color(pen.palette().ink()).text(count(v.words().size(), tried.size()), strip.getMaxX() + 8, y, Pen.SMALL, Pen.At.LEFT);
      String none = v.untriedWords().isEmpty() ? "" : v.untriedWords().size() + " not tried";
      pen.text(Pen.fit(none, Pen.SMALL, end - strip.getMaxX() - 10), strip.getMaxX() + 8, y + 9, Pen.SMALL, Pen.At.LEFT);
    }

    private static void key(Pen pen, double x, double y) {
      Mark.DISC.draw(pen.color(pen.palette().color(2)), x, y - 2.5, 3);
      pen.color(pen.palette().ink()).text("burnt", x + 7, y, Pen.SMALL, Pen.At.LEFT);
      Mark.RING.draw(pen.color(pen.palette().color(1)), x + 44, y - 2.5, 3);
      pen.color(pen.palette().ink()).text("planned, or a word not tried", x + 51, y, Pen.SMALL, Pen.At.LEFT);
      Rectangle2D box = new Rectangle2D.Double(x + 164, y - 7, 16, 9);
      pen.color(pen.palette().quiet()).line(0.35f).hatch(box, 1, 2.4).line(0.4f).draw(box);
      pen.color(pen.palette().ink()).text("evidence", x + 184, y, Pen.SMALL, Pen.At.LEFT);
      bracket(pen, x + 230, x + 250, y - 1);
      pen.text("widest stretch without a trial", x + 254, y, Pen.SMALL, Pen.At.LEFT);
    }
  }
}
