package daubline.charts;

import daubline.analysis.Origins;
import daubline.analysis.StudyResults;
import daubline.base.Printed;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.Verdict;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Every trial against every evidence sheet at a glance: shade and number for agreement, a bar for coverage. */
final class AgreementMap implements FigureSpec {

  private static final double ROW = 24;
  private static final double HEAD = 66;
  private static final double FOOT = 16;

  @Override
  public String id() {
    return "agreement-map";
  }

  @Override
  public String table() {
    return "ranking";
  }

  @Override
  public String title() {
    return "Map of Agreement";
  }

  @Override
  public Optional<Figure> build(StudyResults results) {
    return results.comparisons().stream().anyMatch(Comparison::isTested) ? Optional.of(new Drawing(results)) : Optional.empty();
  }

  private static final class Drawing extends RowFigure {

    private final Map<String, String> trials = new LinkedHashMap<>();
    private final Map<String, String> sheets = new LinkedHashMap<>();
    private final StudyResults results;

    Drawing(StudyResults results) {
      this(results, results.comparisons().stream().filter(Comparison::isTested).toList());
    }

    private Drawing(StudyResults results, List<Comparison> tested) {
      super("Agreement of the remains of each trial (rows) with each evidence sheet (columns): the number and the shade give the median "
          + "agreement, 0 to 100; the bar below it gives the coverage, the share of the criteria by weight that could be "
          + "tested. A ring marks what could not be tested at all." + leftOut(results.comparisons(), tested), count(tested, Comparison::trial) * ROW + HEAD + FOOT);
      this.results = results;
      tested.forEach(c -> {
        trials.put(c.trial(), c.trialName());
        sheets.put(c.sheet(), c.sheetName());
      });
    }

    private static long count(List<Comparison> comparisons, Function<Comparison, String> what) {
      return comparisons.stream().map(what).distinct().count();
    }

    private static String leftOut(List<Comparison> all, List<Comparison> tested) {
      long trials = count(all, Comparison::trial) - count(tested, Comparison::trial);
      long sheets = count(all, Comparison::sheet) - count(tested, Comparison::sheet);
      return trials + sheets == 0 ? "" : " Left out because nothing could be tested: " + trials + " trials and " + sheets + " sheets.";
    }

    @Override
    public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
      Pen pen = new Pen(g, palette);
      double names = Math.min(area.getWidth() * 0.3, trials.values().stream().mapToDouble(n -> Pen.width(n, Pen.NORMAL)).max().orElse(0) + 8);
      double left = area.getX() + names;
      double column = Math.min(64, (area.getMaxX() - left - 34) / sheets.size());
      headings(pen, left, column, area.getY() + HEAD - 5);
      double y = area.getY() + HEAD;
      for (Map.Entry<String, String> trial : trials.entrySet()) {
        pen.color(palette.ink()).text(Pen.fit(trial.getValue(), Pen.NORMAL, names - 8), left - 6, y + ROW / 2 + 3, Pen.NORMAL, Pen.At.RIGHT);
        double x = left;
        for (String sheet : sheets.keySet()) {
          cell(pen, results.comparison(trial.getKey(), sheet), new Rectangle2D.Double(x + 0.75, y + 0.75, column - 1.5, ROW - 1.5));
          x += column;
        }
        y += ROW;
      }
      pen.color(palette.ink()).text("number and shade: agreement; bar: coverage", left, y + 11, Pen.SMALL, Pen.At.LEFT);
    }

    private void headings(Pen pen, double left, double column, double y) {
      double x = left + column / 2;
      for (String name : sheets.values()) {
        pen.turned(Pen.fit(name, Pen.SMALL, (HEAD - 8) / Math.sin(Math.toRadians(50))), x, y, Pen.SMALL, -50, Pen.At.LEFT);
        x += column;
      }
    }

    private static void cell(Pen pen, Optional<Comparison> comparison, Rectangle2D cell) {
      Palette palette = pen.palette();
      if (comparison.isEmpty() || !comparison.get().isTested()) {
        pen.color(palette.quiet()).line(0.3f).draw(cell);
        VerdictMark.draw(pen, Verdict.NOT_TESTED, cell.getCenterX(), cell.getCenterY(), 3.4);
        return;
      }
      Comparison c = comparison.get();
      pen.spot(cell, () -> Origins.agreement(c));
      double share = 0.06 + 0.84 * c.agreement() / 100;
      Color text = share > 0.5 ? palette.paper() : palette.ink();
      pen.color(mix(palette.paper(), palette.color(2), share)).fill(cell).color(palette.quiet()).line(0.3f).draw(cell);
      boolean wide = cell.getWidth() > 38;
      pen.color(text).text(Printed.fixed(c.agreement(), 0), cell.getX() + cell.getWidth() * (wide ? 0.34 : 0.5), cell.getY() + 12, Pen.LARGE, Pen.At.CENTRE);
      if (wide) {
        pen.text(Printed.fixed(c.coverage() * 100, 0) + " %", cell.getMaxX() - 2, cell.getY() + 12, Pen.SMALL, Pen.At.RIGHT);
      }
      Rectangle2D whole = new Rectangle2D.Double(cell.getX() + 3, cell.getMaxY() - 6, cell.getWidth() - 6, 3);
      pen.line(0.4f).draw(whole);
      pen.fill(new Rectangle2D.Double(whole.getX(), whole.getY(), whole.getWidth() * c.coverage(), whole.getHeight()));
    }

    private static Color mix(Color from, Color to, double share) {
      return new Color(part(from.getRed(), to.getRed(), share), part(from.getGreen(), to.getGreen(), share), part(from.getBlue(), to.getBlue(), share));
    }

    private static int part(int from, int to, double share) {
      return (int) Math.round(from + (to - from) * share);
    }
  }
}
