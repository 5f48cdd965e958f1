package daubline.cli;

import daubline.analysis.forecast.TrialForecast;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.engine.process.BurnForecast;
import daubline.engine.process.Forecast;
import daubline.session.StudySession;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Before the fire: what physics, chemistry and published smelts say of a trial. */
@Command(name = "forecast", mixinStandardHelpOptions = true,
    description = "Before the fire: air, fuel, heat, slag, iron and when the slag reaches the air inlet, with how sure that is.")
final class ForecastCommand implements Callable<Integer> {

  /** The units in which people read each canonical one. */
  private static final Map<String, String[]> SHOWN = Map.of("s", new String[] {"TIME", "min"}, "kg/s", new String[] {"MASS_FLOW", "kg/h"},
      "m", new String[] {"LENGTH", "cm"}, "m/s", new String[] {"SPEED", "m/s"}, "1", new String[] {"FRACTION", "%"});

  @Mixin
  private StudyArgument study;

  @Option(names = "--trial", paramLabel = "TRIAL", description = "only this trial, by name or id; may be repeated")
  private List<String> trials = List.of();

  @Option(names = "--draws", paramLabel = "N", defaultValue = "300", description = "courses to draw (default: ${DEFAULT-VALUE})")
  private int draws;

  @Option(names = "--seed", paramLabel = "N", defaultValue = "20260101", description = "seed of the random numbers (default: ${DEFAULT-VALUE})")
  private long seed;

  @Option(names = "--used", description = "list the values that went in, and where they stand")
  private boolean used;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = study.read()) {
      List<TrialForecast> forecasts = TrialForecast.of(session, trials, draws, seed);
      forecasts.forEach(this::print);
      forecasts.stream().flatMap(f -> f.forecast().stream()).findFirst().ifPresent(f -> f.cautions().forEach(Out::line));
      return forecasts.stream().anyMatch(f -> f.forecast().isPresent()) ? Out.DONE : Out.WRONG;
    }
  }

  private void print(TrialForecast trial) {
    Out.line("%s", trial.name());
    if (used) {
      trial.used().forEach(t -> Out.line("  used: %s: %s", t.what(), t.value()));
    }
    trial.forecast().ifPresent(this::print);
    trial.findings().forEach(f -> Out.line("  %s", f));
    Out.line("");
  }

  private void print(BurnForecast forecast) {
    Out.line("  %-46s %-10s %-18s %-9s %s", "", "middle", "5–95 %", "", "what the figure is worth");
    for (Forecast f : forecast.quantities()) {
      Optional<Unit> unit = unit(f);
      String symbol = unit.map(Unit::symbol).orElse(f.quantity().unit());
      Out.line("  %-46s %-10s %-18s %-9s %s", f.quantity().label(), shown(f.median(), f.central(), unit),
          Double.isNaN(f.low()) ? "" : shown(f.low(), f.low(), unit) + "–" + shown(f.high(), f.high(), unit), symbol, f.quantity().standing().words());
      if (used && !f.shares().isEmpty()) {
        Out.line("      depends on: %s", f.shares().entrySet().stream().limit(3)
            .map(e -> e.getKey() + " " + Printed.fixed(e.getValue() * 100, 0) + " %").collect(Collectors.joining(", ")));
      }
    }
  }

  private static Optional<Unit> unit(Forecast forecast) {
    String[] shown = SHOWN.get(forecast.quantity().unit());
    return switch (forecast.quantity()) {
      case BLAST -> Units.find(Quantity.FLUX, "L/(min·cm²)");
      case TAPS -> Optional.empty();
      default -> shown == null ? Optional.empty() : Units.find(Quantity.valueOf(shown[0]), shown[1]);
    };
  }

  private static String shown(double value, double otherwise, Optional<Unit> unit) {
    double canonical = Double.isNaN(value) ? otherwise : value;
    return Printed.number(unit.map(u -> u.fromCanonical(canonical)).orElse(canonical), 3);
  }
}
