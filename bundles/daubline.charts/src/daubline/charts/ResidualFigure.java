package daubline.charts;

import daubline.analysis.design.SeriesEffects;
import daubline.engine.design.learn.EffectsReport;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.IntStream;

/** What the model leaves: against what it expected, and in the order of the trials. */
public final class ResidualFigure extends RowFigure {

  private final SeriesEffects effects;
  private final double[] expected;
  private final double[] residual;

  /** The figure of some effects. @param report the report they hold */
  public ResidualFigure(SeriesEffects effects, EffectsReport report) {
    super("What the model leaves unexplained, against the outcome it expected and in the order of the series. A funnel, a bend or a drift says that the model or "
        + "the day has left something out; marks tell furnaces apart.", EffectPanels.HEIGHT + 6);
    this.effects = effects;
    List<double[]> settings = effects.burnt().design().settings();
    expected = settings.stream().mapToDouble(s -> report.fitted().at(s, 0.95).mean()).toArray();
    residual = IntStream.range(0, expected.length).mapToDouble(i -> effects.outcome().values()[i] - expected[i]).toArray();
  }

  @Override
  public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
    Pen pen = new Pen(g, palette);
    List<Rectangle2D> areas = EffectPanels.areas(area, 2);
    plot(pen, areas.get(0), expected, "expected " + Labels.outcome(effects.outcome()), "observed less expected");
    plot(pen, areas.get(1), IntStream.rangeClosed(1, expected.length).asDoubleStream().toArray(), "order in the series", "");
  }

  private void plot(Pen pen, Rectangle2D at, double[] x, String bottom, String left) {
    Axes axes = new Axes(pen, at, Axes.range(x), Axes.range(residual));
    axes.left(left).bottom(bottom).frame();
    pen.color(pen.palette().ink()).line(0.8f).line(at.getX(), axes.y(0), at.getMaxX(), axes.y(0));
    for (int i = 0; i < x.length; i++) {
      if (Double.isFinite(residual[i])) {
        int furnace = effects.burnt().design().furnaces()[i];
        pen.color(pen.palette().color(furnace));
        Mark.of(furnace).draw(pen, axes.x(x[i]), axes.y(residual[i]), 2.6);
        int trial = i;
        pen.spot(axes.x(x[i]), axes.y(residual[i]), 4, () -> EffectPanels.trial(effects, trial, "observed less expected", residual[trial]));
      }
    }
  }
}
