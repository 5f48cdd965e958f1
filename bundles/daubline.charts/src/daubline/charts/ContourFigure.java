package daubline.charts;

import daubline.analysis.design.SeriesEffects;
import daubline.engine.design.Factor;
import daubline.engine.design.Mixture;
import daubline.engine.design.learn.EffectsReport;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The expected outcome over two measured factors, with the trials that were burnt. */
public final class ContourFigure implements Figure {

  private static final int CELLS = 48;
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

  /** The figure of the first two measured factors that are no shares of one whole; empty when there are fewer than two, or no report. */
  public static Optional<Figure> of(SeriesEffects effects) {
    List<Factor> factors = effects.burnt().design().factors();
    Optional<Mixture> mixture = Mixture.of(effects.burnt().design());
    int[] measured = IntStream.range(0, factors.size()).filter(j -> !factors.get(j).isCategory() && mixture.filter(m -> m.holds(j)).isEmpty()).toArray();
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
    Bands bands = Bands.over(java.util.Arrays.stream(surface).flatMapToDouble(java.util.Arrays::stream).toArray());
    fill(pen, at, surface, bands);
    axes.bottom(title(x)).frame();
    axes.left(title(y));
    bands.key(pen, at.getMaxX() + 10, at.getY(), at.getMaxY());
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

  private static void fill(Pen pen, Rectangle2D at, double[][] surface, Bands bands) {
    double w = at.getWidth() / CELLS;
    double h = at.getHeight() / CELLS;
    for (int i = 0; i < CELLS; i++) {
      for (int j = 0; j < CELLS; j++) {
        pen.color(bands.shade(pen.palette(), surface[i][j])).fill(new Rectangle2D.Double(at.getX() + i * w, at.getMaxY() - (j + 1) * h, w + 0.3, h + 0.3));
      }
    }
  }

  private void trials(Pen pen, Axes axes, Factor x, Factor y) {
    for (int i = 0; i < effects.burnt().trials().size(); i++) {
      double[] s = effects.burnt().design().settings().get(i);
      double px = axes.x(x.decode(s[across]));
      double py = axes.y(y.decode(s[up]));
      int trial = i;
      pen.spot(px, py, 5, () -> EffectPanels.trial(effects, trial, Labels.outcome(effects.outcome()), effects.outcome().values()[trial]));
      Bands.trial(pen, px, py, effects.outcome().values()[i], px > axes.x(x.low() + 0.7 * (x.high() - x.low())));
    }
  }
}
