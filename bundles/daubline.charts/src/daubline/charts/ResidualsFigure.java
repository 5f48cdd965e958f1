package daubline.charts;

import daubline.analysis.Origins;
import daubline.analysis.StudyResults;
import daubline.analysis.TrialData;
import daubline.analysis.record.TrialRecord;
import daubline.base.Amount;
import daubline.base.Printed;
import daubline.base.Stage;
import daubline.base.Trail;
import daubline.base.Variable;
import daubline.engine.inference.Statement;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** How far outcomes lie from what was stated before the fire, in combined standard uncertainties. */
final class ResidualsFigure implements FigureSpec {

  @Override
  public String id() {
    return "prediction-residuals";
  }

  @Override
  public String table() {
    return "predictions";
  }

  @Override
  public String title() {
    return "Outcomes Less Predictions";
  }

  @Override
  public Optional<Figure> build(StudyResults results) {
    Map<String, List<Residual>> rows = new LinkedHashMap<>();
    for (TrialData trial : results.snapshot().trials()) {
      for (TrialRecord.PredictionData p : results.snapshot().record().trial(trial.id()).map(TrialRecord::predictions).orElse(List.of())) {
        residual(trial, p).ifPresent(u -> rows.computeIfAbsent(results.snapshot().variables().find(p.variable()).map(Variable::name).orElse(p.variable()),
            v -> new ArrayList<>()).add(new Residual(trial.name(), u, Stream.concat(Stream.of(p.statement().trail()),
            Origins.stated(trial, p.variable()).stream()).toList())));
      }
    }
    return rows.isEmpty() ? Optional.empty() : Optional.of(new Drawing(rows));
  }

  private record Residual(String trial, double u, List<Trail> from) {
  }

  private static Optional<Double> residual(TrialData trial, TrialRecord.PredictionData p) {
    List<Statement> found = trial.at(Stage.AS_FOUND, p.variable());
    List<Statement> outcome = found.isEmpty() ? trial.at(Stage.AS_FIRED, p.variable()) : found;
    Amount predicted = p.statement().amount();
    if (outcome.size() != 1 || !outcome.get(0).amount().isNumber() || !predicted.isNumber()) {
      return Optional.empty();
    }
    Amount got = outcome.get(0).amount();
    double sigma = Math.hypot(predicted.sigmaOr(spread(predicted)), got.sigmaOr(spread(got)));
    return sigma > 0 ? Optional.of((got.value() - predicted.value()) / sigma) : Optional.empty();
  }

  /** The standard uncertainty of a range, taken as even (JCGM 100:2008, 4.3.7); nothing otherwise. */
  private static double spread(Amount amount) {
    return amount.kind() == daubline.base.ValueKind.RANGE ? (amount.high() - amount.low()) / Math.sqrt(12) : 0;
  }

  private static final class Drawing extends RowFigure {

    private static final double NAMES = 150;
    private static final double ROW = 15;
    private static final double TOP = 12;
    private static final double BOTTOM = 32;

    private final Map<String, List<Residual>> rows;

    Drawing(Map<String, List<Residual>> rows) {
      super("Outcomes less what was stated before the fire, in combined standard uncertainties u, one mark a trial. The hatched band is ±2 u, within which "
          + "19 of 20 would lie if the uncertainties were stated well; numbers stand at marks outside it: "
          + (outside(rows).isEmpty() ? "none." : String.join("; ", outside(rows)) + "."), TOP + BOTTOM + ROW * rows.size());
      this.rows = rows;
    }

    private static List<String> outside(Map<String, List<Residual>> rows) {
      List<String> texts = new ArrayList<>();
      rows.forEach((name, residuals) -> residuals.stream().filter(r -> Math.abs(r.u()) > 2)
          .forEach(r -> texts.add((texts.size() + 1) + " " + r.trial())));
      return texts;
    }

    @Override
    public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
      Pen pen = new Pen(g, palette);
      double reach = Math.max(3, rows.values().stream().flatMap(List::stream).mapToDouble(r -> Math.abs(r.u())).max().orElse(3) * 1.1);
      Rectangle2D frame = new Rectangle2D.Double(area.getX() + NAMES, area.getY() + TOP, area.getWidth() - NAMES - 10, ROW * rows.size());
      double scale = frame.getWidth() / 2 / reach;
      double middle = frame.getCenterX();
      pen.color(pen.palette().quiet()).line(0.25f).hatch(new Rectangle2D.Double(middle - 2 * scale, frame.getY(), 4 * scale, frame.getHeight()), 1, 5);
      axis(pen, frame, reach, scale);
      double y = frame.getY();
      int number = 0;
      for (Map.Entry<String, List<Residual>> row : rows.entrySet()) {
        pen.color(pen.palette().ink()).text(Pen.fit(row.getKey(), Pen.NORMAL, NAMES - 10), frame.getX() - 6, y + ROW - 4.5, Pen.NORMAL, Pen.At.RIGHT);
        for (Residual residual : row.getValue()) {
          double x = middle + residual.u() * scale;
          pen.spot(x, y + ROW / 2, 4, () -> Trail.reckoned(row.getKey() + ", " + residual.trial(), Printed.fixed(residual.u(), 1) + " u", "(outcome − prediction) / combined standard uncertainty", residual.from()));
          Mark.DISC.draw(pen.color(pen.palette().color(0)), x, y + ROW / 2, 2.4);
          if (Math.abs(residual.u()) > 2) {
            pen.color(pen.palette().ink()).text(Integer.toString(++number), x + (residual.u() > 0 ? 4 : -4), y + ROW / 2 + 2.5, Pen.SMALL,
                residual.u() > 0 ? Pen.At.LEFT : Pen.At.RIGHT);
          }
        }
        y += ROW;
      }
    }

    private static void axis(Pen pen, Rectangle2D frame, double reach, double scale) {
      double step = Ticks.step(2 * reach, 8);
      pen.color(pen.palette().ink()).line(Pen.THIN).draw(frame).line(frame.getCenterX(), frame.getY(), frame.getCenterX(), frame.getMaxY());
      for (double v = -Math.floor(reach / step) * step; v <= reach; v += step) {
        double x = frame.getCenterX() + v * scale;
        pen.line(x, frame.getMaxY(), x, frame.getMaxY() + 3).text(Ticks.label(v, step), x, frame.getMaxY() + 11, Pen.SMALL, Pen.At.CENTRE);
      }
      pen.text("(outcome − prediction) / u", frame.getCenterX(), frame.getMaxY() + 24, Pen.NORMAL, Pen.At.CENTRE);
    }
  }
}
