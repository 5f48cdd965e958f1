package daubline.charts;

import daubline.analysis.design.SeriesEffects;
import daubline.base.Printed;
import daubline.engine.design.Factor;
import daubline.engine.design.Mixture;
import daubline.engine.design.learn.EffectsReport;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The expected outcome over three shares of one whole, in the triangle whose corners hold the most of one share that the
 * least of the two others leaves.
 */
public final class MixtureFigure implements Figure {

  private static final double HEIGHT = Math.sqrt(3) / 2;
  private static final int STEPS = 40;
  private static final int TICKS = 5;
  private static final double EDGE = 1e-9;

  private final SeriesEffects effects;
  private final EffectsReport report;
  private final Mixture mixture;
  private final List<Factor> factors;
  private final double[] low = new double[3];
  private final double[] high = new double[3];
  /** How far each share goes from its least to its corner. */
  private final double reach;

  private MixtureFigure(SeriesEffects effects, EffectsReport report, Mixture mixture) {
    this.effects = effects;
    this.report = report;
    this.mixture = mixture;
    factors = effects.burnt().design().factors();
    for (int k = 0; k < 3; k++) {
      Factor f = factors.get(mixture.parts()[k]);
      int part = k;
      double[] burnt = effects.burnt().design().settings().stream().mapToDouble(s -> mixture.shares(factors, s)[part]).toArray();
      low[k] = Math.max(0, Math.min(f.low(), java.util.Arrays.stream(burnt).min().orElse(f.low())));
      high[k] = Math.max(f.high(), java.util.Arrays.stream(burnt).max().orElse(f.high()));
    }
    reach = mixture.whole() - low[0] - low[1] - low[2];
  }

  /** The figure; empty when no three factors are shares of one whole, or there is no report. */
  public static Optional<Figure> of(SeriesEffects effects) {
    return effects.report().flatMap(r -> Mixture.of(effects.burnt().design()).map(m -> new MixtureFigure(effects, r, m)).filter(f -> f.reach > 0));
  }

  @Override
  public String caption() {
    List<String> names = mixture.names(factors);
    return "Expected " + effects.outcome().name() + " over the shares of " + names.get(0) + ", " + names.get(1) + " and " + names.get(2) + ", which add up to "
        + Printed.number(mixture.whole(), 3) + unit() + ", other factors in the middle or at their first word; darker is more. Each share grows towards its own corner, where the "
        + "two others are at their least. Shaded where all three lie within what was planned or burnt. Marks are trials burnt, with their outcome; away from them the surface is the model's.";
  }

  private String unit() {
    String unit = factors.get(mixture.parts()[0]).unit();
    return unit.isEmpty() ? "" : "\u00A0" + unit;
  }

  @Override
  public double aspect() {
    return 0.8;
  }

  @Override
  public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
    Pen pen = new Pen(g, palette);
    double side = Math.min(area.getWidth() - 116, (area.getHeight() - 58) / HEIGHT);
    Point2D corner = new Point2D.Double(area.getX() + 34, area.getY() + 22 + side * HEIGHT);
    Bands bands = surface(pen, corner, side);
    scales(pen, corner, side);
    pen.color(pen.palette().ink()).line(0.8f).draw(triangle(corner, side, new double[] {1, 0, 0}, new double[] {0, 1, 0}, new double[] {0, 0, 1}));
    names(pen, corner, side);
    bands.key(pen, area.getMaxX() - 44, corner.getY() - side * HEIGHT * 0.75, corner.getY());
    for (int i = 0; i < effects.burnt().trials().size(); i++) {
      Point2D p = point(corner, side, inside(mixture.shares(factors, effects.burnt().design().settings().get(i))));
      int trial = i;
      pen.spot(p.getX(), p.getY(), 5, () -> EffectPanels.trial(effects, trial, Labels.outcome(effects.outcome()), effects.outcome().values()[trial]));
      Bands.trial(pen, p.getX(), p.getY(), effects.outcome().values()[i], p.getX() > corner.getX() + 0.6 * side);
    }
  }

  /** Shares as parts of the triangle: each from its least, all summing to one. */
  private double[] inside(double[] shares) {
    return new double[] {(shares[0] - low[0]) / reach, (shares[1] - low[1]) / reach, (shares[2] - low[2]) / reach};
  }

  private double[] shares(double[] inside) {
    return new double[] {low[0] + inside[0] * reach, low[1] + inside[1] * reach, low[2] + inside[2] * reach};
  }

  /** The first share at the left, the second at the top, the third at the right. */
  private static Point2D point(Point2D corner, double side, double[] p) {
    return new Point2D.Double(corner.getX() + side * (p[2] + p[1] / 2), corner.getY() - side * HEIGHT * p[1]);
  }

  private static Path2D triangle(Point2D corner, double side, double[]... corners) {
    Path2D path = new Path2D.Double();
    for (double[] c : corners) {
      Point2D p = point(corner, side, c);
      if (path.getCurrentPoint() == null) {
        path.moveTo(p.getX(), p.getY());
      } else {
        path.lineTo(p.getX(), p.getY());
      }
    }
    path.closePath();
    return path;
  }

  private Bands surface(Pen pen, Point2D corner, double side) {
    List<double[][]> cells = cells();
    double[] expected = cells.stream().mapToDouble(this::expected).toArray();
    Bands bands = Bands.over(expected);
    for (int i = 0; i < expected.length; i++) {
      if (Double.isFinite(expected[i])) {
        Path2D cell = triangle(corner, side, cells.get(i));
        pen.color(bands.shade(pen.palette(), expected[i])).fill(cell).line(0.4f).draw(cell);
      }
    }
    return bands;
  }

  /** Small triangles that fill the large one, those that point up and those that point down. */
  private static List<double[][]> cells() {
    List<double[][]> cells = new ArrayList<>();
    double h = 1.0 / STEPS;
    for (int i = 0; i < STEPS; i++) {
      for (int j = 0; i + j < STEPS; j++) {
        cells.add(new double[][] {at(i * h, j * h), at((i + 1) * h, j * h), at(i * h, (j + 1) * h)});
        if (i + j < STEPS - 1) {
          cells.add(new double[][] {at((i + 1) * h, j * h), at(i * h, (j + 1) * h), at((i + 1) * h, (j + 1) * h)});
        }
      }
    }
    return cells;
  }

  private static double[] at(double first, double second) {
    return new double[] {first, second, 1 - first - second};
  }

  /** The outcome expected in the middle of a cell; NaN where a share lies outside its limits. */
  private double expected(double[][] cell) {
    double[] middle = new double[3];
    for (double[] c : cell) {
      for (int k = 0; k < 3; k++) {
        middle[k] += c[k] / 3;
      }
    }
    double[] shares = shares(middle);
    for (int k = 0; k < 3; k++) {
      if (shares[k] > high[k] + EDGE) {
        return Double.NaN;
      }
    }
    return report.fitted().at(mixture.with(factors, new double[factors.size()], shares), 0.95).mean();
  }

  private void scales(Pen pen, Point2D corner, double side) {
    for (int i = 1; i < TICKS; i++) {
      double t = i / (double) TICKS;
      pen.color(pen.palette().quiet()).line(0.3f);
      line(pen, corner, side, new double[] {t, 1 - t, 0}, new double[] {t, 0, 1 - t});
      line(pen, corner, side, new double[] {1 - t, t, 0}, new double[] {0, t, 1 - t});
      line(pen, corner, side, new double[] {1 - t, 0, t}, new double[] {0, 1 - t, t});
      pen.color(pen.palette().ink());
      Point2D first = point(corner, side, new double[] {t, 0, 1 - t});
      Point2D second = point(corner, side, new double[] {1 - t, t, 0});
      Point2D third = point(corner, side, new double[] {0, 1 - t, t});
      pen.text(value(0, t), first.getX(), first.getY() + 10, Pen.SMALL, Pen.At.CENTRE).text(value(1, t), second.getX() - 4, second.getY() + 2, Pen.SMALL, Pen.At.RIGHT)
          .text(value(2, t), third.getX() + 4, third.getY() + 2, Pen.SMALL, Pen.At.LEFT);
    }
  }

  private String value(int part, double t) {
    return Printed.number(low[part] + t * reach, 3);
  }

  private static void line(Pen pen, Point2D corner, double side, double[] from, double[] to) {
    Point2D a = point(corner, side, from);
    Point2D b = point(corner, side, to);
    pen.line(a.getX(), a.getY(), b.getX(), b.getY());
  }

  /** Each name at its corner, with the share that it has there. */
  private void names(Pen pen, Point2D corner, double side) {
    String[] words = new String[3];
    for (int k = 0; k < 3; k++) {
      words[k] = Pen.fit(factors.get(mixture.parts()[k]).name(), Pen.NORMAL, side / 2 - 30) + " " + value(k, 1) + unit();
    }
    pen.color(pen.palette().ink()).text(words[0], corner.getX() - 30, corner.getY() + 24, Pen.NORMAL, Pen.At.LEFT)
        .text(words[1], corner.getX() + side / 2, corner.getY() - side * HEIGHT - 8, Pen.NORMAL, Pen.At.CENTRE)
        .text(words[2], corner.getX() + side + 34, corner.getY() + 24, Pen.NORMAL, Pen.At.RIGHT);
  }
}
