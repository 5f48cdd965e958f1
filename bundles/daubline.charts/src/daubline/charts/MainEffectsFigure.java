package daubline.charts;

import daubline.analysis.design.SeriesEffects;
import daubline.engine.design.Factor;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** One panel for each factor: every trial's outcome against its setting, and the mean of each setting. */
public final class MainEffectsFigure extends RowFigure {

  private final SeriesEffects effects;
  private final List<Factor> factors;

  /** The figure of some effects. */
  public MainEffectsFigure(SeriesEffects effects) {
    super("Every trial's " + effects.outcome().name() + " against each setting; marks tell furnaces apart, short bars are means of a setting. "
        + "A mean says nothing without the scatter around it, and trials of one furnace are not independent.", EffectPanels.height(effects.burnt().design().factors().size()) + 6);
    this.effects = effects;
    factors = effects.burnt().design().factors();
  }

  @Override
  public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
    Pen pen = new Pen(g, palette);
    List<Rectangle2D> areas = EffectPanels.areas(area, factors.size());
    for (int j = 0; j < factors.size(); j++) {
      panel(pen, areas.get(j), j);
    }
  }

  private void panel(Pen pen, Rectangle2D at, int j) {
    Factor f = factors.get(j);
    List<double[]> settings = effects.burnt().design().settings();
    double[] x = settings.stream().mapToDouble(s -> f.isCategory() ? s[j] : f.decode(s[j])).toArray();
    Axes axes = new Axes(pen, at, f.isCategory() ? new double[] {-0.5, f.names().size() - 0.5} : Axes.range(x), Axes.range(effects.outcome().values()));
    axes.left(j % EffectPanels.ACROSS == 0 ? Labels.outcome(effects.outcome()) : "");
    bottom(axes, f, at.getWidth());
    axes.frame();
    points(pen, axes, x);
    means(pen, axes, x, at.getWidth() / (f.isCategory() ? f.names().size() * 3.0 : 16));
  }

  private static void bottom(Axes axes, Factor f, double width) {
    if (f.isCategory()) {
      for (int i = 0; i < f.names().size(); i++) {
        axes.word(i, f.names().get(i), width / f.names().size() - 2);
      }
      axes.title(f.name());
    } else {
      axes.bottom(f.name() + (f.unit().isEmpty() ? "" : " (" + f.unit() + ")"));
    }
  }

  private void points(Pen pen, Axes axes, double[] x) {
    for (int i = 0; i < x.length; i++) {
      if (Double.isFinite(effects.outcome().values()[i])) {
        int furnace = effects.burnt().design().furnaces()[i];
        pen.color(pen.palette().color(furnace));
        Mark.of(furnace).draw(pen, axes.x(x[i]), axes.y(effects.outcome().values()[i]), 2.6);
        int trial = i;
        pen.spot(axes.x(x[i]), axes.y(effects.outcome().values()[i]), 4, () -> EffectPanels.trial(effects, trial, Labels.outcome(effects.outcome()), effects.outcome().values()[trial]));
      }
    }
  }

  private void means(Pen pen, Axes axes, double[] x, double half) {
    Map<Double, Double> means = IntStream.range(0, x.length).filter(i -> Double.isFinite(effects.outcome().values()[i])).boxed()
        .collect(Collectors.groupingBy(i -> x[i], TreeMap::new, Collectors.averagingDouble(i -> effects.outcome().values()[i])));
    pen.color(pen.palette().ink()).line(1.4f);
    means.forEach((at, mean) -> pen.line(axes.x(at) - half, axes.y(mean), axes.x(at) + half, axes.y(mean)));
    pen.line(0.5f, 2, 2);
    Double before = null;
    for (Double at : means.keySet()) {
      if (before != null) {
        pen.line(axes.x(before), axes.y(means.get(before)), axes.x(at), axes.y(means.get(at)));
      }
      before = at;
    }
  }
}
