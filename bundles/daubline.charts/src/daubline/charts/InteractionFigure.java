package daubline.charts;

import daubline.analysis.design.SeriesEffects;
import daubline.engine.design.Factor;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** One panel for each pair of factors: the outcome against one, with a line for each setting of the other. */
public final class InteractionFigure extends RowFigure {

  private static final int MOST = 9;
  /** More words of a factor than the key has room for are left out of the lines. */
  private static final int GROUPS = 4;
  private final SeriesEffects effects;
  private final List<int[]> pairs;

  /** The figure of some effects; the first nine pairs. */
  public InteractionFigure(SeriesEffects effects) {
    this(effects, pairs(effects.burnt().design().factors().size()));
  }

  private InteractionFigure(SeriesEffects effects, List<int[]> pairs) {
    super("Outcome against one factor, a line for each setting of the other (low and high halves for a measured one). Lines that run side by side say that "
        + "the factors act independently; lines that cross or part say that one changes what the other does. Points are single trials.",
        EffectPanels.height(Math.max(1, pairs.size())) + 6);
    this.effects = effects;
    this.pairs = pairs;
  }

  private static List<int[]> pairs(int factors) {
    List<int[]> pairs = new ArrayList<>();
    for (int i = 0; i < factors; i++) {
      for (int j = i + 1; j < factors && pairs.size() < MOST; j++) {
        pairs.add(new int[] {i, j});
      }
    }
    return pairs;
  }

  @Override
  public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
    Pen pen = new Pen(g, palette);
    List<Rectangle2D> areas = EffectPanels.areas(area, pairs.size());
    for (int p = 0; p < pairs.size(); p++) {
      panel(pen, areas.get(p), pairs.get(p)[0], pairs.get(p)[1], p % EffectPanels.ACROSS == 0);
    }
  }

  private void panel(Pen pen, Rectangle2D at, int along, int by, boolean first) {
    List<Factor> factors = effects.burnt().design().factors();
    Factor x = factors.get(along);
    double[] codes = effects.burnt().design().settings().stream().mapToDouble(s -> x.isCategory() ? s[along] : x.decode(s[along])).toArray();
    Axes axes = new Axes(pen, at, x.isCategory() ? new double[] {-0.5, x.names().size() - 0.5} : Axes.range(codes), Axes.range(effects.outcome().values()));
    axes.left(first ? Labels.outcome(effects.outcome()) : "");
    if (x.isCategory()) {
      IntStream.range(0, x.names().size()).forEach(i -> axes.word(i, x.names().get(i), at.getWidth() / x.names().size() - 2));
      axes.title(x.name());
    } else {
      axes.bottom(x.name() + (x.unit().isEmpty() ? "" : " (" + x.unit() + ")"));
    }
    axes.frame();
    Factor other = factors.get(by);
    List<String> groups = other.isCategory() ? other.names() : List.of("low " + other.name(), "high " + other.name());
    for (int k = 0; k < Math.min(GROUPS, groups.size()); k++) {
      int group = k;
      int[] members = IntStream.range(0, codes.length).filter(i -> Double.isFinite(effects.outcome().values()[i])).filter(i -> group(other, by, i) == group).toArray();
      line(pen, axes, codes, members, k);
      pen.text(Pen.fit(groups.get(k), Pen.SMALL, at.getWidth() / 2 - 12), at.getX() + 9 + k % 2 * at.getWidth() / 2, at.getY() - 12 + k / 2 * 8, Pen.SMALL, Pen.At.LEFT);
      Mark.of(k).draw(pen, at.getX() + 5 + k % 2 * at.getWidth() / 2, at.getY() - 14.5 + k / 2 * 8, 2);
    }
  }

  private int group(Factor other, int by, int trial) {
    double code = effects.burnt().design().settings().get(trial)[by];
    return other.isCategory() ? (int) Math.round(code) : code < 0 ? 0 : 1;
  }

  private void line(Pen pen, Axes axes, double[] x, int[] members, int k) {
    pen.color(pen.palette().color(k));
    double[] at = IntStream.of(members).mapToDouble(i -> x[i]).distinct().sorted().toArray();
    double[] mean = new double[at.length];
    for (int i = 0; i < at.length; i++) {
      double here = at[i];
      mean[i] = IntStream.of(members).filter(m -> x[m] == here).mapToDouble(m -> effects.outcome().values()[m]).average().orElse(0);
    }
    pen.stroke(pen.palette().stroke(k, Pen.THICK));
    for (int i = 1; i < at.length; i++) {
      pen.line(axes.x(at[i - 1]), axes.y(mean[i - 1]), axes.x(at[i]), axes.y(mean[i]));
    }
    for (int m : members) {
      Mark.of(k).draw(pen, axes.x(x[m]), axes.y(effects.outcome().values()[m]), 2.3);
      pen.spot(axes.x(x[m]), axes.y(effects.outcome().values()[m]), 4, () -> EffectPanels.trial(effects, m, Labels.outcome(effects.outcome()), effects.outcome().values()[m]));
    }
  }
}
