package daubline.charts;

import daubline.analysis.design.SeriesEffects;
import daubline.base.Printed;
import daubline.engine.design.Factor;
import daubline.engine.design.learn.EffectsReport;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The expected outcome over two measured factors, with the trials that were burnt. */
public final class ContourFigure implements Figure {

  private static final int CELLS = 48;
  private static final int BANDS = 7;
  private final SeriesEffects effects;
  private final EffectsReport report;
  private final int across;
  private final int up;

  private ContourFigure(SeriesEffects effects, EffectsReport report, int across, int up) {
    this.effects = effects;
    this.report = report;
    this.across = across;
    this.up = up;
  }

  /** The figure of the first two measured factors; empty when there are fewer than two, or no report. */
  public static Optional<Figure> of(SeriesEffects effects) {
    List<Factor> factors = effects.burnt().design().factors();
    int[] measured = IntStream.range(0, factors.size()).filter(j -> !factors.get(j).isCategory()).toArray();
    return measured.length < 2 ? Optional.empty() : effects.report().map(r -> new ContourFigure(effects, r, measured[0], measured[1]));
  }

  @Override
  public String caption() {
    return "Expected " + effects.outcome().name() + " over two factors, the others in the middle or at their first word; darker is more. Marks are trials burnt, with "
        + "their outcome. Away from the marks the surface is the model's, not the furnace's.";
  }

  @Override
  public double aspect() {
    return 0.72;
  }

  @Override
  public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
    Pen pen = new Pen(g, palette);
    Rectangle2D at = new Rectangle2D.Double(area.getX() + 42, area.getY() + 8, area.getWidth() - 120, area.getHeight() - 42);
    List<Factor> factors = effects.burnt().design().factors();
    Factor x = factors.get(across);
    Factor y = factors.get(up);
    double[] xEnds = ends(x, across);
    double[] yEnds = ends(y, up);
    Axes axes = new Axes(pen, at, xEnds, yEnds);
    double[][] surface = surface(x, xEnds, y, yEnds);
    double[] ends = ends(surface);
    fill(pen, at, surface, ends);
    axes.bottom(title(x)).frame();
    axes.left(title(y));
    key(pen, at, ends);
    trials(pen, axes, x, y);
  }

  private static String title(Factor f) {
    return f.name() + (f.unit().isEmpty() ? "" : " (" + f.unit() + ")");
  }

  /** The limits of a factor, or the trials where one was burnt outside them. */
  private double[] ends(Factor f, int j) {
    double[] burnt = effects.burnt().design().settings().stream().mapToDouble(s -> f.decode(s[j])).toArray();
    return new double[] {Math.min(f.low(), java.util.Arrays.stream(burnt).min().orElse(f.low())), Math.max(f.high(), java.util.Arrays.stream(burnt).max().orElse(f.high()))};
  }

  private double[][] surface(Factor x, double[] xEnds, Factor y, double[] yEnds) {
    double[][] surface = new double[CELLS][CELLS];
    double[] setting = new double[effects.burnt().design().factors().size()];
    for (int i = 0; i < CELLS; i++) {
      for (int j = 0; j < CELLS; j++) {
        setting[across] = x.code(xEnds[0] + (i + 0.5) / CELLS * (xEnds[1] - xEnds[0]));
        setting[up] = y.code(yEnds[0] + (j + 0.5) / CELLS * (yEnds[1] - yEnds[0]));
        surface[i][j] = report.fitted().at(setting, 0.95).mean();
      }
    }
    return surface;
  }

  private static double[] ends(double[][] surface) {
    double low = java.util.Arrays.stream(surface).flatMapToDouble(java.util.Arrays::stream).min().orElse(0);
    double high = java.util.Arrays.stream(surface).flatMapToDouble(java.util.Arrays::stream).max().orElse(1);
    return new double[] {low, high > low ? high : low + 1};
  }

  private static int band(double value, double[] ends) {
    return (int) Math.min(BANDS - 1, Math.max(0, Math.floor((value - ends[0]) / (ends[1] - ends[0]) * BANDS)));
  }

  private static Color shade(Palette palette, int band) {
    double share = 0.75 * band / (BANDS - 1);
    Color a = palette.paper();
    Color b = palette.ink();
    return new Color((int) (a.getRed() + share * (b.getRed() - a.getRed())), (int) (a.getGreen() + share * (b.getGreen() - a.getGreen())),
        (int) (a.getBlue() + share * (b.getBlue() - a.getBlue())));
  }

  private static void fill(Pen pen, Rectangle2D at, double[][] surface, double[] ends) {
    double w = at.getWidth() / CELLS;
    double h = at.getHeight() / CELLS;
    for (int i = 0; i < CELLS; i++) {
      for (int j = 0; j < CELLS; j++) {
        pen.color(shade(pen.palette(), band(surface[i][j], ends))).fill(new Rectangle2D.Double(at.getX() + i * w, at.getMaxY() - (j + 1) * h, w + 0.3, h + 0.3));
      }
    }
  }

  private static void key(Pen pen, Rectangle2D at, double[] ends) {
    double x = at.getMaxX() + 10;
    double h = at.getHeight() / BANDS;
    for (int b = 0; b < BANDS; b++) {
      Rectangle2D box = new Rectangle2D.Double(x, at.getMaxY() - (b + 1) * h, 12, h);
      pen.color(shade(pen.palette(), b)).fill(box).color(pen.palette().ink()).line(0.3f).draw(box);
    }
    for (int b = 0; b <= BANDS; b++) {
      pen.text(Printed.number(ends[0] + b * (ends[1] - ends[0]) / BANDS, 3), x + 15, at.getMaxY() - b * h + 2.5, Pen.SMALL, Pen.At.LEFT);
    }
  }

  private void trials(Pen pen, Axes axes, Factor x, Factor y) {
    for (int i = 0; i < effects.burnt().trials().size(); i++) {
      double[] s = effects.burnt().design().settings().get(i);
      double px = axes.x(x.decode(s[across]));
      double py = axes.y(y.decode(s[up]));
      pen.color(pen.palette().paper());
      Mark.DISC.draw(pen, px, py, 4.2);
      pen.color(pen.palette().ink());
      Mark.DISC.draw(pen, px, py, 3);
      boolean right = px > axes.x(x.low() + 0.7 * (x.high() - x.low()));
      pen.textOnPaper(Printed.number(effects.outcome().values()[i], 3), px + (right ? -6 : 6), py + 2.5, Pen.SMALL, right ? Pen.At.RIGHT : Pen.At.LEFT);
    }
  }
}
