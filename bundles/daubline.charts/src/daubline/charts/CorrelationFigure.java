package daubline.charts;

import daubline.base.Printed;
import daubline.base.Trail;
import daubline.engine.design.judge.DesignReview;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** How main effects and interactions run together in a design: the larger the disc, the harder two are told apart. */
public final class CorrelationFigure extends RowFigure {

  private static final double CELL = 14;
  private static final double NAMES = 150;
  private static final int MOST = 24;
  private final List<String> names;
  private final double[][] values;

  /** The figure of a design's correlations; the first two dozen columns. */
  public CorrelationFigure(DesignReview.Correlations correlations) {
    super("How far two effects run together in the trials of this design: a full black disc, they cannot be told apart; open disc, they run against each other; "
        + "nothing, they can be told apart fully; cross, the column does not vary.", CELL * Math.min(MOST, correlations.names().size()) + 24);
    names = correlations.names().subList(0, Math.min(MOST, correlations.names().size()));
    values = correlations.values();
  }

  @Override
  public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
    Pen pen = new Pen(g, palette);
    int n = names.size();
    double cell = Math.min(CELL, (area.getWidth() - NAMES - 10) / Math.max(1, n));
    double left = area.getX() + NAMES;
    double top = area.getY() + 14;
    for (int i = 0; i < n; i++) {
      pen.color(palette.ink()).text((i + 1) + "  " + Pen.fit(names.get(i), Pen.NORMAL, NAMES - 28), left - 5, top + i * CELL + CELL * 0.72, Pen.NORMAL, Pen.At.RIGHT);
      pen.text(Integer.toString(i + 1), left + (i + 0.5) * cell, top - 3, Pen.SMALL, Pen.At.CENTRE);
      for (int j = 0; j < n; j++) {
        Rectangle2D box = new Rectangle2D.Double(left + j * cell, top + i * CELL, cell, CELL);
        cell(pen, values[i][j], box);
        String pair = names.get(i) + " with " + names.get(j);
        double value = values[i][j];
        pen.spot(box, () -> Trail.reckoned(pair, Double.isNaN(value) ? "does not vary" : Printed.fixed(value, 2), "correlation of two columns of the design over its trials", List.of()));
      }
    }
  }

  private static void cell(Pen pen, double value, Rectangle2D box) {
    pen.color(pen.palette().quiet()).line(0.25f).draw(box);
    pen.color(pen.palette().ink()).line(0.7f);
    if (Double.isNaN(value)) {
      pen.line(box.getX() + 3, box.getY() + 3, box.getMaxX() - 3, box.getMaxY() - 3).line(box.getX() + 3, box.getMaxY() - 3, box.getMaxX() - 3, box.getY() + 3);
      return;
    }
    double r = Math.sqrt(Math.abs(value)) * (Math.min(box.getWidth(), box.getHeight()) / 2 - 1);
    if (Math.abs(value) > 0.02) {
      Ellipse2D disc = new Ellipse2D.Double(box.getCenterX() - r, box.getCenterY() - r, 2 * r, 2 * r);
      if (value > 0) {
        pen.fill(disc);
      }
      pen.draw(disc);
    }
  }
}
