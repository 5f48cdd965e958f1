package daubline.charts;

import daubline.analysis.Origins;
import daubline.analysis.forecast.TrialForecast;
import daubline.base.Printed;
import daubline.engine.process.BurnInputs;
import daubline.engine.process.BurnQuantity;
import daubline.engine.process.Forecast;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** When slag and bloom reach the air inlet in each trial of a series, the earliest first, with what makes it so. */
public final class InletOrder extends RowFigure {

  private static final double ROW = 24;
  private static final double AXIS = 28;
  private static final double HOUR = 3600;
  private static final int ROOM = 40;

  private final List<TrialForecast> trials;
  private final String marked;
  private final double longest;

  private InletOrder(List<TrialForecast> trials, String marked) {
    super("When slag and bloom fill the room below the air inlet if nothing is tapped, the earliest first: disc, middle; line, 5 to 95 %; open square, planned end "
        + "of charging. A disc left of its square means that the inlet chokes before the end. Where slag is tapped, the disc is the time by which to tap. Below each name: tap and pit, the room among the charcoal, and the slag by hour.",
        trials.size() * ROW + AXIS);
    this.trials = trials;
    this.marked = marked;
    longest = trials.stream().mapToDouble(t -> Math.max(middle(t, BurnQuantity.DURATION), middle(t, BurnQuantity.BLOCKING) * 1.15)).filter(Double::isFinite)
        .max().orElse(HOUR) / HOUR;
  }

  /**
   * The order of some trials.
   *
   * @param marked id of the trial whose name is underlined; empty for none
   * @return empty when none has a forecast
   */
  public static Optional<Figure> of(List<TrialForecast> all, String marked) {
    List<TrialForecast> trials = all.stream().filter(t -> t.forecast().isPresent() && Double.isFinite(middle(t, BurnQuantity.BLOCKING)))
        .sorted(Comparator.comparingDouble(t -> middle(t, BurnQuantity.BLOCKING))).limit(ROOM).toList();
    return trials.isEmpty() ? Optional.empty() : Optional.of(new InletOrder(trials, marked));
  }

  private static double middle(TrialForecast trial, BurnQuantity q) {
    return trial.get(q).map(f -> Double.isNaN(f.median()) ? f.central() : f.median()).orElse(Double.NaN);
  }

  @Override
  public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
    Pen pen = new Pen(g, palette);
    double widest = trials.stream().mapToDouble(t -> Math.max(Pen.width(why(t), Pen.SMALL), Pen.width(t.name(), Pen.NORMAL))).max().orElse(0);
    double left = area.getX() + Math.min(area.getWidth() * 0.56, widest + 14);
    double right = area.getMaxX() - 8;
    double y = area.getY();
    for (double h = 0; h <= longest; h++) {
      double at = left + h / longest * (right - left);
      pen.color(palette.quiet()).line(0.25f).line(at, y, at, y + trials.size() * ROW);
      pen.color(palette.ink()).text(Printed.number(h), at, y + trials.size() * ROW + 9, Pen.SMALL, Pen.At.CENTRE);
    }
    pen.text("hours of charging", (left + right) / 2, y + trials.size() * ROW + 20, Pen.NORMAL, Pen.At.CENTRE);
    for (TrialForecast trial : trials) {
      row(pen, trial, area.getX(), left, right, y + ROW / 2);
      y += ROW;
    }
  }

  private void row(Pen pen, TrialForecast trial, double start, double left, double right, double y) {
    String name = Pen.fit(trial.name(), Pen.NORMAL, left - start - 10);
    pen.color(pen.palette().ink()).text(name, left - 8, y - 1, Pen.NORMAL, Pen.At.RIGHT);
    if (trial.trial().equals(marked)) {
      pen.line(0.8f).line(left - 8 - Pen.width(name, Pen.NORMAL), y + 0.5, left - 8, y + 0.5);
    }
    pen.text(Pen.fit(why(trial), Pen.SMALL, left - start - 10), left - 8, y + 9, Pen.SMALL, Pen.At.RIGHT);
    Forecast blocking = trial.get(BurnQuantity.BLOCKING).orElseThrow();
    double scale = (right - left) / longest / HOUR;
    if (!Double.isNaN(blocking.low())) {
      pen.line(1.6f).line(left + blocking.low() * scale, y, Math.min(right, left + blocking.high() * scale), y);
    }
    Mark.DISC.draw(pen, Math.min(right, left + middle(trial, BurnQuantity.BLOCKING) * scale), y, 3.2);
    for (BurnQuantity q : List.of(BurnQuantity.BLOCKING, BurnQuantity.DURATION)) {
      pen.spot(Math.min(right, left + middle(trial, q) * scale), y, 5, () -> Origins.forecast(trial, q, Printed.number(middle(trial, q) / HOUR, 3) + " h"));
    }
    pen.spot(new Rectangle2D.Double(start, y + 2, left - start, 9), () -> Origins.forecast(trial, BurnQuantity.SLAG, why(trial)));
    pen.color(pen.palette().color(1));
    Mark.OPEN_SQUARE.draw(pen, Math.min(right, left + middle(trial, BurnQuantity.DURATION) * scale), y, 3.4);
  }

  private static String why(TrialForecast trial) {
    BurnInputs in = trial.plan().inputs().orElseThrow();
    double rate = middle(trial, BurnQuantity.SLAG) / middle(trial, BurnQuantity.DURATION) * HOUR;
    String relief = (in.slagRoom().pit() > 0 ? "pit, " : "") + (in.slagRoom().tapped() ? "tapped, " : in.slagRoom().pit() > 0 ? "" : "neither tap nor pit, ");
    return relief + Printed.fixed(1000 * in.room(), 1) + " L of room, " + Printed.fixed(rate, 1) + " kg/h of slag";
  }
}
