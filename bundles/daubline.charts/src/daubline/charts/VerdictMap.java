package daubline.charts;

import daubline.analysis.Origins;
import daubline.analysis.StudyResults;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.CriterionResult;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;

/** The verdict on each criterion, trial by trial, by shape and word. */
final class VerdictMap implements FigureSpec {

  private static final int ROOM = 42;
  private static final double ROW = 12;
  private static final double HEAD = 18;
  private static final double NAMES = 104;
  private static final double KEY = 18;

  @Override
  public String id() {
    return "verdicts";
  }

  @Override
  public String table() {
    return "comparison";
  }

  @Override
  public String title() {
    return "Verdicts by Criterion";
  }

  @Override
  public Optional<Figure> build(StudyResults results) {
    ComparedSheets sheets = ComparedSheets.of(results, ROOM);
    return sheets.panels().isEmpty() ? Optional.empty() : Optional.of(new Drawing(sheets));
  }

  private static final class Drawing extends RowFigure {

    private final List<List<Comparison>> panels;
    private final List<String> criteria;

    Drawing(ComparedSheets sheets) {
      super("What each criterion says of the remains of each trial beside each evidence sheet, trials in the order of their agreement: full "
          + "disc, consistent; disc with a bar, not consistent; ring, not tested. Not tested counts neither for nor against a trial."
          + sheets.remark(), NAMES + KEY + sheets.rows() * ROW + sheets.panels().size() * HEAD);
      panels = sheets.panels();
      criteria = panels.get(0).get(0).criteria().stream().map(CriterionResult::name).toList();
    }

    @Override
    public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
      Pen pen = new Pen(g, palette);
      double left = area.getX() + area.getWidth() * 0.3;
      double column = Math.min(34, (area.getMaxX() - left - 56) / criteria.size());
      for (int i = 0; i < criteria.size(); i++) {
        pen.turned(Pen.fit(criteria.get(i), Pen.SMALL, (NAMES - 6) / Math.sin(Math.toRadians(55))), left + (i + 0.5) * column, area.getY() + NAMES - 4,
            Pen.SMALL, -55, Pen.At.LEFT);
      }
      double y = area.getY() + NAMES;
      for (List<Comparison> panel : panels) {
        pen.color(palette.quiet()).line(0.4f).line(area.getX(), y, left + column * criteria.size(), y);
        pen.color(palette.ink()).text(Pen.fit(panel.get(0).sheetName(), Pen.LARGE, area.getWidth()), area.getX(), y + HEAD - 5, Pen.LARGE, Pen.At.LEFT);
        y += HEAD;
        for (Comparison c : panel) {
          row(pen, c, area.getX(), left, column, y);
          y += ROW;
        }
      }
      VerdictMark.key(pen, left, y + KEY - 5);
    }

    private static void row(Pen pen, Comparison c, double from, double left, double column, double y) {
      pen.text(Pen.fit(c.trialName(), Pen.NORMAL, left - from - 6), left - 6, y + ROW - 3.4, Pen.NORMAL, Pen.At.RIGHT);
      for (int i = 0; i < c.criteria().size(); i++) {
        CriterionResult r = c.criteria().get(i);
        pen.spot(left + (i + 0.5) * column, y + ROW / 2, 5, () -> Origins.criterion(c, r));
        VerdictMark.draw(pen, r.verdict(), left + (i + 0.5) * column, y + ROW / 2, 3.6);
      }
    }
  }
}
