package daubline.charts;

import daubline.analysis.Origins;
import daubline.analysis.StudyResults;
import daubline.analysis.TriedVariable;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.base.Unit;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.SheetData;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** What was chosen for each trial as a line across upright scales, told apart by colour, dash and mark after its agreement. */
public final class ParallelFigure implements FigureSpec {

  private static final int LEAST_TRIALS = 3;
  private static final int MOST_AXES = 9;

  @Override
  public String id() {
    return "variables-by-agreement";
  }

  @Override
  public String table() {
    return "dimensions";
  }

  @Override
  public String title() {
    return "Variables by Agreement";
  }

  /** Against the evidence sheet of which most could be tested. */
  @Override
  public Optional<Figure> build(StudyResults results) {
    ComparedSheets sheets = ComparedSheets.of(results, Integer.MAX_VALUE);
    return sheets.panels().isEmpty() ? Optional.empty()
        : results.snapshot().sheet(sheets.panels().get(0).get(0).sheet()).flatMap(s -> of(results, s.sheet()));
  }

  /** Against one target; empty unless three tested trials state two or more variables that differ among them. */
  public static Optional<Figure> of(StudyResults results, SheetData target) {
    List<Comparison> tested = results.ranked(target.id()).stream().filter(Comparison::isTested).toList();
    List<Scale> scales = new ArrayList<>();
    for (TriedVariable variable : TriedVariable.of(results.snapshot())) {
      Map<String, Double> known = new LinkedHashMap<>();
      tested.forEach(c -> Optional.ofNullable(variable.numbers().get(c.trial())).ifPresent(v -> known.put(c.trial(), v)));
      if (known.size() >= LEAST_TRIALS && known.values().stream().distinct().count() > 1) {
        Unit unit = variable.variable().unit();
        scales.add(new Scale(variable.variable().name(), unit, known, trial -> from(results, trial, variable.variable().id())));
      }
    }
    scales.sort(Comparator.comparingInt((Scale s) -> -s.values().size()));
    int left = Math.max(0, scales.size() - MOST_AXES);
    return tested.size() < LEAST_TRIALS || scales.size() < 2 ? Optional.empty()
        : Optional.of(new Drawing(target.name(), tested, scales.subList(0, scales.size() - left), left));
  }

  private static List<Trail> from(StudyResults results, String trial, String variable) {
    return results.snapshot().trial(trial).map(t -> Origins.of(results.snapshot(), t, variable)).orElse(List.of());
  }

  /** One upright scale. */
  private record Scale(String name, Unit unit, Map<String, Double> values, Function<String, List<Trail>> from) {

    Trail trail(Comparison c) {
      return new Trail(name + ", " + c.trialName(), Printed.number(unit.fromCanonical(values.get(c.trial())), 3) + (unit.symbol().isEmpty() ? "" : " " + unit.symbol()), "",
          from.apply(c.trial()));
    }

    double low() {
      return values.values().stream().mapToDouble(v -> v).min().orElseThrow();
    }

    double high() {
      return values.values().stream().mapToDouble(v -> v).max().orElseThrow();
    }

    double share(String trial) {
      Double value = values.get(trial);
      return value == null ? Double.NaN : (value - low()) / (high() - low());
    }

    String text(double value) {
      return Printed.number(unit.fromCanonical(value), 3);
    }

    String heading() {
      return name + (unit.symbol().isEmpty() ? "" : " (" + unit.symbol() + ")");
    }
  }

  /** Thirds of the order, the highest first; each has a colour, a dash and a mark of its own. */
  private enum Third {
    HIGHEST("highest third", 2, Mark.DISC), MIDDLE("middle third", 1, Mark.DIAMOND), LOWEST("lowest third", 3, Mark.OPEN_SQUARE);

    private static final float[][] DASHES = {{}, {7, 3}, {1.5f, 2.5f}};

    private final String word;
    private final int color;
    private final Mark mark;

    Third(String word, int color, Mark mark) {
      this.word = word;
      this.color = color;
      this.mark = mark;
    }

    static Third of(int place, int all) {
      return values()[Math.min(2, 3 * place / all)];
    }

    BasicStroke stroke() {
      float[] dash = DASHES[ordinal()];
      float width = ordinal() == 0 ? 1.5f : 1f;
      return dash.length == 0 ? new BasicStroke(width) : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
    }
  }

  private static final class Drawing implements Figure {

    private static final double NAMES = 84;
    private static final double KEY = 16;
    private static final double FOOT = 16;
    private static final double LABELS = 72;
    /** In less width the key does not name the ranges. */
    private static final double ROOMY = 380;

    private final String target;
    private final List<Comparison> trials;
    private final List<Scale> scales;
    private final int leftOut;

    Drawing(String target, List<Comparison> trials, List<Scale> scales, int leftOut) {
      this.target = target;
      this.trials = trials;
      this.scales = List.copyOf(scales);
      this.leftOut = leftOut;
    }

    @Override
    public String caption() {
      return "What was chosen for each of " + trials.size() + " trials, one line for each trial, scale by scale from the lowest to the highest setting; at the right "
          + "the agreement of its remains with " + target + ". Solid lines with discs, the third of the trials that agrees best; dashed with diamonds, the middle "
          + "third; dotted with open squares, the last. A line is broken where a trial states no number. Like settings beside like agreement show what went together, not "
          + "what caused it." + (leftOut == 0 ? "" : " " + leftOut + " more variables that fewer trials state are not drawn.");
    }

    @Override
    public double aspect() {
      return 0.66;
    }

    @Override
    public double widthMm() {
      return 170;
    }

    @Override
    public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
      Pen pen = new Pen(g, palette);
      Rectangle2D field = new Rectangle2D.Double(area.getX() + 18, area.getY() + KEY + NAMES, area.getWidth() - 18 - LABELS, area.getHeight() - KEY - NAMES - FOOT);
      key(pen, area);
      for (int a = 0; a < scales.size(); a++) {
        Scale scale = scales.get(a);
        axis(pen, field, a, scale.heading(), scale.text(scale.low()), scale.text(scale.high()));
      }
      axis(pen, field, scales.size(), "agreement", "0", "100");
      for (int t = trials.size() - 1; t >= 0; t--) {
        line(pen, field, trials.get(t), Third.of(t, trials.size()));
      }
      labels(pen, field);
    }

    private double x(Rectangle2D field, int axis) {
      return field.getX() + field.getWidth() * axis / scales.size();
    }

    private void key(Pen pen, Rectangle2D area) {
      double x = area.getX() + 4;
      double y = area.getY() + 9;
      for (Third third : Third.values()) {
        List<Comparison> of = new ArrayList<>();
        for (int t = 0; t < trials.size(); t++) {
          if (Third.of(t, trials.size()) == third) {
            of.add(trials.get(t));
          }
        }
        pen.color(pen.palette().color(third.color)).stroke(third.stroke()).line(x, y - 2.5, x + 22, y - 2.5);
        third.mark.draw(pen, x + 11, y - 2.5, 2.8);
        String text = area.getWidth() < ROOMY ? third.word : third.word + " (" + Printed.fixed(of.getLast().agreement(), 0) + "–" + Printed.fixed(of.getFirst().agreement(), 0) + ")";
        pen.color(pen.palette().ink()).text(text, x + 26, y, Pen.SMALL, Pen.At.LEFT);
        x += 38 + Pen.width(text, Pen.SMALL);
      }
    }

    private void axis(Pen pen, Rectangle2D field, int axis, String name, String low, String high) {
      double x = x(field, axis);
      pen.color(pen.palette().quiet()).line(0.7f).line(x, field.getY(), x, field.getMaxY());
      pen.color(pen.palette().ink()).turned(Pen.fit(name, Pen.SMALL, (NAMES - 14) / Math.sin(Math.toRadians(40))), x, field.getY() - 12, Pen.SMALL, -40, Pen.At.LEFT);
      pen.textOnPaper(high, x, field.getY() - 3, Pen.SMALL, Pen.At.CENTRE).textOnPaper(low, x, field.getMaxY() + 9, Pen.SMALL, Pen.At.CENTRE);
    }

    private double[] shares(Comparison trial) {
      double[] shares = new double[scales.size() + 1];
      for (int a = 0; a < scales.size(); a++) {
        shares[a] = scales.get(a).share(trial.trial());
      }
      shares[scales.size()] = trial.agreement() / 100;
      return shares;
    }

    private void line(Pen pen, Rectangle2D field, Comparison trial, Third third) {
      double[] shares = shares(trial);
      Path2D path = new Path2D.Double();
      for (int a = 0; a < shares.length; a++) {
        boolean known = !Double.isNaN(shares[a]);
        double y = field.getMaxY() - shares[a] * field.getHeight();
        if (known && a > 0 && !Double.isNaN(shares[a - 1])) {
          path.lineTo(x(field, a), y);
        } else if (known) {
          path.moveTo(x(field, a), y);
        }
      }
      pen.color(pen.palette().color(third.color)).stroke(third.stroke()).draw(path);
      for (int a = 0; a < shares.length; a++) {
        if (!Double.isNaN(shares[a])) {
          third.mark.draw(pen.color(pen.palette().color(third.color)), x(field, a), field.getMaxY() - shares[a] * field.getHeight(), 2.8);
          int axis = a;
          pen.spot(x(field, a), field.getMaxY() - shares[a] * field.getHeight(), 4, () -> axis < scales.size() ? scales.get(axis).trail(trial) : Origins.agreement(trial));
        }
      }
    }

    /** The names beside the last scale, moved apart where trials agree alike; as many as there is room for, the best first. */
    private void labels(Pen pen, Rectangle2D field) {
      int room = (int) (field.getHeight() / 8.5);
      List<Comparison> named = trials.subList(0, Math.min(room, trials.size()));
      double[] y = named.stream().mapToDouble(c -> field.getMaxY() - c.agreement() / 100 * field.getHeight()).toArray();
      for (int i = 1; i < y.length; i++) {
        y[i] = Math.max(y[i], y[i - 1] + 8.5);
      }
      double over = y.length == 0 ? 0 : Math.max(0, y[y.length - 1] - field.getMaxY());
      for (int i = y.length - 1; i >= 0 && over > 0; i--) {
        y[i] = Math.min(y[i], field.getMaxY() - (y.length - 1 - i) * 8.5);
      }
      double x = field.getMaxX() + 6;
      for (int i = 0; i < y.length; i++) {
        pen.color(pen.palette().ink()).text(Pen.fit(named.get(i).trialName(), Pen.SMALL, LABELS - 8), x, y[i] + 2.5, Pen.SMALL, Pen.At.LEFT);
      }
    }
  }
}
