package daubline.charts;

import daubline.analysis.Origins;
import daubline.analysis.StudyResults;
import daubline.base.Printed;
import daubline.engine.inference.Comparison;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;

/** Agreement of each trial with each evidence sheet, with its interval and the band of a true reproduction. */
final class RankingFigure implements FigureSpec {

  private static final int ROOM = 48;
  private static final double ROW = 13;
  private static final double HEAD = 20;
  private static final double AXIS = 30;

  @Override
  public String id() {
    return "ranking";
  }

  @Override
  public String table() {
    return "ranking";
  }

  @Override
  public String title() {
    return "Agreement and Coverage";
  }

  @Override
  public Optional<Figure> build(StudyResults results) {
    ComparedSheets sheets = ComparedSheets.of(results, ROOM);
    return sheets.panels().isEmpty() ? Optional.empty() : Optional.of(new Drawing(sheets));
  }

  private static final class Drawing extends RowFigure {

    private final List<List<Comparison>> panels;

    Drawing(ComparedSheets sheets) {
      super("Agreement (0 to 100) of the remains of each trial with each evidence sheet: disc, median; line, 5 to 95 %; thin line, what it "
          + "could be if everything untested disagreed or agreed fully; hatched, the scores to be expected of a faithful repeat. Coverage, "
          + "at the right, is the share of the criteria by weight that could be tested. Agreement at low coverage says little."
          + sheets.remark(), sheets.rows() * ROW + sheets.panels().size() * HEAD + AXIS);
      panels = sheets.panels();
    }

    @Override
    public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
      Pen pen = new Pen(g, palette);
      double left = area.getX() + Math.min(area.getWidth() * 0.34, widestName() + 8);
      double right = area.getMaxX() - 46;
      double y = area.getY() + 2;
      double top = y + HEAD;
      for (List<Comparison> panel : panels) {
        pen.color(palette.ink()).text(Pen.fit(panel.get(0).sheetName(), Pen.LARGE, right - area.getX()), area.getX(), y + HEAD - 7, Pen.LARGE, Pen.At.LEFT);
        if (panel == panels.get(0)) {
          pen.text("coverage", area.getMaxX(), y + HEAD - 7, Pen.SMALL, Pen.At.RIGHT);
        }
        y += HEAD;
        grid(pen, left, right, y, y + panel.size() * ROW);
        for (Comparison c : panel) {
          row(pen, c, area, left, right, y + ROW / 2);
          y += ROW;
        }
      }
      axis(pen, left, right, Math.max(y, top));
    }

    private double widestName() {
      return panels.stream().flatMap(List::stream).mapToDouble(c -> Pen.width(c.trialName(), Pen.NORMAL)).max().orElse(0);
    }

    private static double x(double agreement, double left, double right) {
      return left + agreement / 100 * (right - left);
    }

    private static void grid(Pen pen, double left, double right, double top, double bottom) {
      pen.color(pen.palette().quiet()).line(0.25f);
      for (int a = 0; a <= 100; a += 20) {
        pen.line(x(a, left, right), top, x(a, left, right), bottom);
      }
    }

    private void row(Pen pen, Comparison c, Rectangle2D area, double left, double right, double y) {
      Palette palette = pen.palette();
      if (!Double.isNaN(c.bandLow())) {
        Rectangle2D band = new Rectangle2D.Double(x(c.bandLow(), left, right), y - 4.5, x(c.bandHigh() - c.bandLow(), 0, right - left), 9);
        pen.color(palette.quiet()).line(0.35f).hatch(band, 1, 2.6);
      }
      pen.color(palette.ink()).line(0.4f).line(x(c.boundLow(), left, right), y, x(c.boundHigh(), left, right), y);
      pen.line(2f).line(x(c.low(), left, right), y, x(c.high(), left, right), y);
      pen.spot(new Rectangle2D.Double(left, y - 6, area.getMaxX() - left, 12), () -> Origins.agreement(c));
      Mark.DISC.draw(pen, x(c.agreement(), left, right), y, 3.2);
      pen.color(palette.ink()).text(Pen.fit(c.trialName(), Pen.NORMAL, left - area.getX() - 6), left - 6, y + 2.8, Pen.NORMAL, Pen.At.RIGHT);
      pen.text(Printed.fixed(c.coverage() * 100, 0) + " %", area.getMaxX() - 2, y + 2.8, Pen.NORMAL, Pen.At.RIGHT);
    }

    private static void axis(Pen pen, double left, double right, double y) {
      pen.color(pen.palette().ink()).line(Pen.THIN).line(left, y, right, y);
      for (int a = 0; a <= 100; a += 20) {
        pen.line(x(a, left, right), y, x(a, left, right), y + 3).text(Integer.toString(a), x(a, left, right), y + 11, Pen.SMALL, Pen.At.CENTRE);
      }
      pen.text("agreement", (left + right) / 2, y + 22, Pen.NORMAL, Pen.At.CENTRE);
    }
  }
}
