package daubline.cli;

import daubline.analysis.forecast.Figures;
import daubline.analysis.forecast.TrialForecast;
import daubline.base.Printed;
import daubline.engine.process.BurnForecast;
import daubline.engine.process.BurnQuantity;
import daubline.engine.process.Forecast;
import daubline.engine.process.NextMeasurement;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Prints forecasts for a terminal. */
final class ForecastText {

  private static final List<BurnQuantity> GRID = List.of(BurnQuantity.BLAST, BurnQuantity.BURN_RATE, BurnQuantity.DURATION, BurnQuantity.HOTTEST,
      BurnQuantity.BLOOM, BurnQuantity.SLAG, BurnQuantity.BLOCKING);

  private ForecastText() {
  }

  /** One trial after the other, then which fills first, then the cautions. */
  static void print(List<TrialForecast> forecasts, boolean used) {
    forecasts.forEach(f -> print(f, used));
    if (forecasts.stream().filter(f -> f.forecast().isPresent()).count() > 1) {
      order(forecasts);
    }
    forecasts.stream().flatMap(f -> f.forecast().stream()).findFirst().ifPresent(f -> f.cautions().forEach(Out::line));
  }

  private static void print(TrialForecast trial, boolean used) {
    Out.line("%s", trial.name());
    if (used) {
      trial.used().forEach(t -> Out.line("  used: %s: %s", t.what(), t.value()));
    }
    trial.forecast().ifPresent(f -> print(trial, f, used));
    trial.findings().forEach(f -> Out.line("  %s", f));
    trial.forecast().ifPresent(f -> f.next().forEach(n -> Out.line("  to measure next: %s", n.sentence())));
    Out.line("");
  }

  private static void print(TrialForecast trial, BurnForecast forecast, boolean used) {
    Out.line("  %-46s %-9s %-16s %-9s %-11s %s", "", "middle", "5–95 %", "observed", "", "what the figure is worth");
    classes(forecast);
    for (Forecast f : forecast.quantities()) {
      BurnQuantity q = f.quantity();
      String observed = trial.outcome(q).map(o -> Figures.text(q, o.value())).orElse("");
      Out.line("  %-46s %-9s %-16s %-9s %-11s %s", q.label(), middle(f), interval(f), observed, Figures.symbol(q), q.standing().words());
      if (used) {
        Out.line("      source: %s%s", q.source().text(), f.shares().isEmpty() ? "" : "; depends on: " + f.shares().entrySet().stream().limit(4)
            .map(e -> e.getKey() + " " + Printed.fixed(e.getValue() * 100, 0) + " %").collect(Collectors.joining(", ")));
      }
    }
  }

  /** The ore by size class as it comes to the air inlet; nothing for ore of one size. */
  private static void classes(BurnForecast forecast) {
    if (forecast.oreClasses().size() > 1) {
      forecast.oreClasses().forEach(c -> Out.line("  %-46s %-9s %-16s %-9s %-11s %s", "ore of " + Printed.number(1000 * c.size(), 2) + " mm, "
          + Printed.fixed(100 * c.share(), 0) + " % of it: oxygen gone", Printed.fixed(100 * c.reduced(), 0),
          Double.isNaN(c.low()) ? "" : Printed.fixed(100 * c.low(), 0) + "–" + Printed.fixed(100 * c.high(), 0), "", "%", BurnQuantity.Standing.EXPLAINS.words()));
    }
  }

  private static String middle(Forecast f) {
    return Figures.text(f.quantity(), Double.isNaN(f.median()) ? f.central() : f.median());
  }

  private static String interval(Forecast f) {
    return Double.isNaN(f.low()) ? "" : Figures.text(f.quantity(), f.low()) + "–" + Figures.text(f.quantity(), f.high());
  }

  /** In which order slag and bloom reach the air inlets, by the share of the charging that is over then. */
  private static void order(List<TrialForecast> forecasts) {
    RaceWords.sentences(forecasts).forEach(Out::line);
    Out.line("slag and bloom reach the air inlet, the earliest first:");
    forecasts.stream().filter(f -> f.forecast().isPresent()).sorted(Comparator.comparingDouble(f -> middle(f, BurnQuantity.BLOCKING)))
        .forEach(f -> Out.line("  %-24s after %s h (%s) of %s h: %s kg of slag, inlet %s", f.name(),
            Figures.text(BurnQuantity.BLOCKING, middle(f, BurnQuantity.BLOCKING)), f.get(BurnQuantity.BLOCKING).map(ForecastText::interval).orElse(""),
            Figures.text(BurnQuantity.DURATION, middle(f, BurnQuantity.DURATION)), Figures.text(BurnQuantity.SLAG, middle(f, BurnQuantity.SLAG)),
            Double.isNaN(f.plan().shape().inlet()) ? "height unknown" : Printed.number(f.plan().shape().inlet() * 100, 3) + " cm above the floor"));
  }

  private static double middle(TrialForecast trial, BurnQuantity quantity) {
    return trial.get(quantity).map(f -> Double.isNaN(f.median()) ? f.central() : f.median()).orElse(Double.NaN);
  }

  /** One line for each trial and point of the grid. */
  static void printGrid(Map<String, List<TrialForecast>> all) {
    int wide = all.keySet().stream().mapToInt(String::length).max().orElse(0);
    Out.line("%-" + wide + "s  %-20s %s", "", "", GRID.stream().map(q -> String.format("%-20s", Figures.symbol(q))).collect(Collectors.joining()).stripTrailing());
    Out.line("%-" + wide + "s  %-20s %s", "tried", "trial", GRID.stream().map(q -> String.format("%-20s", name(q))).collect(Collectors.joining()).stripTrailing());
    all.forEach((tried, forecasts) -> forecasts.forEach(f -> Out.line("%-" + wide + "s  %-20s %s", tried, f.name(), row(f))));
    all.values().stream().flatMap(List::stream).flatMap(f -> f.forecast().stream()).findFirst().map(BurnForecast::cautions).ifPresent(c -> c.forEach(Out::line));
  }

  private static String name(BurnQuantity q) {
    return switch (q) {
      case BLAST -> "blast";
      case BURN_RATE -> "charcoal";
      case DURATION -> "duration";
      case HOTTEST -> "hottest";
      case BLOCKING -> "inlet reached";
      default -> q.label();
    };
  }

  private static String row(TrialForecast trial) {
    Optional<BurnForecast> forecast = trial.forecast();
    return forecast.isEmpty() ? trial.findings().stream().filter(daubline.base.Finding::isError).map(f -> f.what()).collect(Collectors.joining("; "))
        : GRID.stream().map(q -> String.format("%-20s", (middle(forecast.get().get(q)) + " " + bracket(interval(forecast.get().get(q)))).strip()))
            .collect(Collectors.joining()).stripTrailing();
  }

  private static String bracket(String interval) {
    return interval.isEmpty() ? "" : "(" + interval + ")";
  }
}
