package daubline.charts;

import daubline.analysis.design.SeriesEffects;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.engine.design.learn.EffectsReport.HalfNormal;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.stream.IntStream;

/** Sizes of effects against what chance alone would give, with Lenth's limits. */
public final class HalfNormalFigure implements Figure {

  private final HalfNormal plot;
  private final SeriesEffects effects;

  /** The figure of a half-normal plot. */
  public HalfNormalFigure(HalfNormal plot, SeriesEffects effects) {
    this.plot = plot;
    this.effects = effects;
  }

  @Override
  public String caption() {
    return "Half-normal plot: if nothing moved the outcome, all effects would lie near the line through the small ones. What stands out to the right of the "
        + "dashed limit would be seen once in twenty by chance for a single effect; of the dotted limit, once in twenty for all effects together (Lenth).";
  }

  @Override
  public double aspect() {
    return 0.68;
  }

  @Override
  public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
    Pen pen = new Pen(g, palette);
    double error = plot.lenth().error();
    double single = error * plot.lenth().single();
    double all = error * plot.lenth().any();
    Rectangle2D at = new Rectangle2D.Double(area.getX() + 40, area.getY() + 10, area.getWidth() - 110, area.getHeight() - 44);
    double widest = Math.max(plot.sizes()[plot.sizes().length - 1], Math.max(single, all));
    Axes axes = new Axes(pen, at, new double[] {0, widest * 1.08}, new double[] {0, plot.scores()[plot.scores().length - 1] * 1.1});
    axes.left("half-normal score").bottom("size of the effect, all on one footing").frame();
    if (error > 0) {
      pen.line(0.6f).line(axes.x(0), axes.y(0), axes.x(Math.min(widest * 1.08, error * axes.top())), axes.y(Math.min(axes.top(), widest * 1.08 / error)));
      pen.line(0.9f, 5, 3).line(axes.x(single), at.getY(), axes.x(single), at.getMaxY());
      pen.line(0.9f, 1.2f, 2.2f).line(axes.x(all), at.getY(), axes.x(all), at.getMaxY());
    }
    for (int i = 0; i < plot.sizes().length; i++) {
      boolean out = plot.sizes()[i] > single;
      int effect = i;
      pen.spot(axes.x(plot.sizes()[i]), axes.y(plot.scores()[i]), 4, () -> Trail.reckoned("Effect of " + plot.names().get(effect), Printed.number(plot.sizes()[effect], 3),
          "size of the effect on one footing with the others, over all trials", IntStream.range(0, effects.burnt().trials().size()).filter(t -> Double.isFinite(effects.outcome().values()[t]))
              .mapToObj(t -> EffectPanels.trial(effects, t, Labels.outcome(effects.outcome()), effects.outcome().values()[t])).toList()));
      pen.color(palette.ink());
      (out ? Mark.DISC : Mark.RING).draw(pen, axes.x(plot.sizes()[i]), axes.y(plot.scores()[i]), 2.8);
      if (out || i >= plot.sizes().length - 3) {
        boolean left = plot.sizes()[i] > widest * 0.62;
        pen.textOnPaper(Pen.fit(plot.names().get(i), Pen.SMALL, 120), axes.x(plot.sizes()[i]) + (left ? -5 : 5), axes.y(plot.scores()[i]) + 2.5, Pen.SMALL,
            left ? Pen.At.RIGHT : Pen.At.LEFT);
      }
    }
  }
}
