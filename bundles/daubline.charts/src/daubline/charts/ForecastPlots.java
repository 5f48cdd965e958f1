package daubline.charts;

import daubline.analysis.Origins;
import daubline.analysis.forecast.Figures;
import daubline.analysis.forecast.Outcome;
import daubline.analysis.forecast.TrialForecast;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.engine.process.BurnForecast;
import daubline.engine.process.BurnQuantity;
import daubline.engine.process.Forecast;
import daubline.engine.process.shaft.ShaftParameter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/** Plots of forecasts: slag against time, predicted beside observed, and what is left over. */
public final class ForecastPlots {

  /** The figures that are weighed or clocked in most smelts, in the order of the marks. */
  public static final List<BurnQuantity> OBSERVED = List.of(BurnQuantity.BURN_RATE, BurnQuantity.DURATION, BurnQuantity.BLOOM, BurnQuantity.SLAG,
      BurnQuantity.SLAG_FEO, BurnQuantity.HOTTEST);
  private static final double HOUR = 3600;
  private static final double HIGHEST = 3;

  private ForecastPlots() {
  }

  /** The level of slag and bloom against time, with the air inlet; empty without a forecast. */
  public static Optional<Figure> slagRise(TrialForecast trial) {
    return trial.forecast().map(f -> slagRise(trial, f));
  }

  private static Figure slagRise(TrialForecast trial, BurnForecast f) {
    double inlet = f.shaft().inputs().get(ShaftParameter.HEARTH) * 100;
    double diameter = f.shaft().inputs().get(ShaftParameter.DIAMETER) * 100;
    double pit = trial.plan().inputs().map(in -> in.slagRoom().pit() * 1e6).orElse(0.0) / (Math.PI * diameter * diameter / 4);
    double below = trial.plan().shape().pit() > 0 && pit > 0 ? trial.plan().shape().pit() * 100 : 0;
    DoubleUnaryOperator level = share -> level(share, inlet, pit, below);
    List<Plot.Point> points = f.slagRise().stream()
        .map(r -> Plot.Point.of(r.time() / HOUR, level.applyAsDouble(r.median()), level.applyAsDouble(r.low()),
            level.applyAsDouble(r.high()), "").from(() -> Trail.reckoned("Slag and bloom of " + trial.name() + " after " + Printed.number(r.time() / HOUR, 3) + " h",
            Printed.number(level.applyAsDouble(r.median()), 3) + " cm above the floor", "slag forecast over the room below the inlet, if nothing is tapped", Origins.used(trial.plan())))).toList();
    double last = f.get(BurnQuantity.DURATION).central() / HOUR;
    double high = Math.max(1.25 * inlet, Math.min(HIGHEST * inlet, 1.15 * level.applyAsDouble(f.slagRise().getLast().median())));
    List<Plot.Series> series = new ArrayList<>();
    if (points.stream().noneMatch(p -> Double.isNaN(p.yLow()))) {
      series.add(new Plot.Series("5–95 %", Plot.Style.BAND, points));
    }
    series.add(new Plot.Series("slag and bloom, middle", Plot.Style.LINE, points));
    double reached = f.get(BurnQuantity.BLOCKING).central() / HOUR;
    Plot plot = Plot.of("How high slag and bloom stand in the furnace of " + trial.name() + " while ore is charged, if nothing is tapped. "
        + "Where the line meets the air inlet, the air is blocked.", new Axis("hours of charging", 0, last > 0 ? last : 1, false),
        new Axis("cm above the floor", -below, high, false), series).with(new Plot.Rule("air inlet", inlet, false)).shaped(0.55);
    return reached < last ? plot.with(new Plot.Rule("reached", reached, true)) : plot;
  }

  /** Height above the floor in cm of a share of the room; the pit fills first. */
  private static double level(double share, double inlet, double pit, double below) {
    double filled = Math.min(HIGHEST * 1.2, share) * (inlet + pit) - pit;
    return filled >= 0 || pit <= 0 ? filled : below * filled / pit;
  }

  /** Predicted against observed of all burnt trials, as a share of what was observed; empty when nothing was. */
  public static Optional<Figure> predictedAgainstObserved(List<TrialForecast> trials) {
    List<Plot.Series> series = new ArrayList<>();
    List<Double> ratios = new ArrayList<>(List.of(0.5, 2.0));
    for (int i = 0; i < OBSERVED.size(); i++) {
      List<Plot.Point> points = new ArrayList<>();
      for (int t = 0; t < trials.size(); t++) {
        Optional<Plot.Point> point = ratio(trials.get(t), OBSERVED.get(i), t + 1 + (i - 2.5) * 0.1);
        point.ifPresent(p -> {
          points.add(p);
          ratios.add(p.yLow());
          ratios.add(p.yHigh());
          ratios.add(p.y());
        });
      }
      series.add(new Plot.Series(points.isEmpty() ? "" : OBSERVED.get(i).label(), Plot.Style.MARKS, points));
    }
    if (series.stream().allMatch(s -> s.points().isEmpty())) {
      return Optional.empty();
    }
    double low = Math.max(0.1, ratios.stream().filter(r -> r > 0).mapToDouble(r -> r).min().orElse(0.5) / 1.1);
    double high = Math.min(10, ratios.stream().filter(Double::isFinite).mapToDouble(r -> r).max().orElse(2) * 1.1);
    return Optional.of(Plot.of("What was predicted for each trial from its plan and the smelts before it, over what was observed: 1 is agreement, the lines "
        + "are 5 to 95 %. Trials in the order of the study: " + names(trials) + ".", new Axis("trial", 0.4, trials.size() + 0.6, false),
        new Axis("predicted over observed", low, high, true), series).with(new Plot.Rule("as observed", 1, false)));
  }

  private static Optional<Plot.Point> ratio(TrialForecast trial, BurnQuantity q, double x) {
    Optional<Outcome> outcome = trial.outcome(q);
    Optional<Forecast> forecast = trial.get(q);
    if (outcome.isEmpty() || forecast.isEmpty() || !(outcome.get().value() > 0)) {
      return Optional.empty();
    }
    double observed = Figures.number(q, outcome.get().value());
    Forecast f = forecast.get();
    double middle = Figures.number(q, Double.isNaN(f.median()) ? f.central() : f.median()) / observed;
    return middle > 0 ? Optional.of(Plot.Point.of(x, middle, Math.max(0.01, Figures.number(q, f.low()) / observed), Figures.number(q, f.high()) / observed, "").from(() -> pair(trial, q, f, outcome.get())))
        : Optional.empty();
  }

  /** A prediction beside what was observed, each with its own origin. */
  private static Trail pair(TrialForecast trial, BurnQuantity q, Forecast f, Outcome seen) {
    String predicted = Figures.text(q, Double.isNaN(f.median()) ? f.central() : f.median());
    String observed = Figures.text(q, seen.value());
    return new Trail(q.label() + " of " + trial.name(), "predicted " + predicted + ", observed " + observed + " " + Figures.symbol(q), "",
        List.of(Origins.forecast(trial, q, predicted), Origins.observed(trial, q, observed)));
  }

  /** What is left over, observed less predicted in half widths of the 90 % interval, of all burnt trials; empty when nothing is. */
  public static Optional<Figure> residuals(List<TrialForecast> trials) {
    List<Plot.Series> series = new ArrayList<>();
    double most = 1.5;
    for (int i = 0; i < OBSERVED.size(); i++) {
      List<Plot.Point> points = new ArrayList<>();
      for (int t = 0; t < trials.size(); t++) {
        double left = residual(trials.get(t), OBSERVED.get(i));
        if (Double.isFinite(left)) {
          BurnQuantity q = OBSERVED.get(i);
          TrialForecast trial = trials.get(t);
          points.add(Plot.Point.of(t + 1 + (i - 2.5) * 0.1, Math.clamp(left, -5, 5)).from(() -> pair(trial, q, trial.get(q).orElseThrow(), trial.outcome(q).orElseThrow())));
          most = Math.max(most, Math.min(5, Math.abs(left)) * 1.1);
        }
      }
      series.add(new Plot.Series(points.isEmpty() ? "" : OBSERVED.get(i).label(), Plot.Style.MARKS, points));
    }
    if (series.stream().allMatch(s -> s.points().isEmpty())) {
      return Optional.empty();
    }
    return Optional.of(Plot.of("Observed less predicted, in half widths of the 90 % interval: nine in ten should lie between -1 and 1; marks that keep to one "
        + "side show a prediction that is too high or too low for this team. Trials in the order of the study: " + names(trials) + ".",
        new Axis("trial", 0.4, trials.size() + 0.6, false), new Axis("left over", -most, most, false), series)
        .with(new Plot.Rule("as predicted", 0, false)).with(new Plot.Rule("95 %", 1, false)).with(new Plot.Rule("5 %", -1, false)));
  }

  /** Observed less predicted in half widths of the interval on that side; NaN where either is missing. */
  public static double residual(TrialForecast trial, BurnQuantity q) {
    Optional<Outcome> outcome = trial.outcome(q);
    Optional<Forecast> forecast = trial.get(q);
    if (outcome.isEmpty() || forecast.isEmpty()) {
      return Double.NaN;
    }
    Forecast f = forecast.get();
    double off = outcome.get().value() - f.median();
    double half = off > 0 ? f.high() - f.median() : f.median() - f.low();
    return half > 0 ? off / half : Double.NaN;
  }

  private static String names(List<TrialForecast> trials) {
    List<String> names = new ArrayList<>();
    for (int t = 0; t < Math.min(24, trials.size()); t++) {
      names.add(t + 1 + " " + trials.get(t).name());
    }
    return String.join(", ", names) + (trials.size() > 24 ? " and " + (trials.size() - 24) + " more" : "");
  }
}
