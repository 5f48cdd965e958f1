package daubline.analysis.forecast;

import daubline.engine.process.BurnInputs;
import daubline.engine.process.BurnQuantity;
import daubline.engine.process.Forecast;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * When slag and bloom reach the air inlet of one trial, with what makes it so; times in seconds.
 *
 * @param trial the trial
 * @param after middle of the forecast
 * @param low 5 % point, NaN without draws
 * @param high 95 % point, NaN without draws
 * @param duration planned length of charging
 * @param room room that slag can fill among the charcoal, m³
 * @param slag slag made, kg/s
 * @param inlet height of the air inlet above the floor, m
 * @param where where the slag goes
 */
public record InletRace(TrialForecast trial, double after, double low, double high, double duration, double room, double slag, double inlet,
    BurnInputs.SlagRoom where) {

  /** The race of one trial; empty without a forecast. */
  public static Optional<InletRace> of(TrialForecast trial) {
    Optional<Forecast> blocking = trial.get(BurnQuantity.BLOCKING);
    Optional<BurnInputs> in = trial.plan().inputs();
    if (blocking.isEmpty() || in.isEmpty() || !Double.isFinite(blocking.get().central())) {
      return Optional.empty();
    }
    double duration = middle(trial, BurnQuantity.DURATION);
    return Optional.of(new InletRace(trial, middle(trial, BurnQuantity.BLOCKING), blocking.get().low(), blocking.get().high(), duration, in.get().room(),
        middle(trial, BurnQuantity.SLAG) / duration, in.get().spread(daubline.engine.process.shaft.ShaftParameter.HEARTH).median(), in.get().slagRoom()));
  }

  private static double middle(TrialForecast trial, BurnQuantity q) {
    return trial.get(q).map(f -> Double.isNaN(f.median()) ? f.central() : f.median()).orElse(Double.NaN);
  }

  /** Whether the middle course blocks the inlet before charging ends. */
  public boolean isBlocked() {
    return after < duration;
  }

  /** The tapped trial whose slag must be let out first; empty when none is tapped. */
  public static Optional<InletRace> firstToTap(List<TrialForecast> trials) {
    return trials.stream().flatMap(t -> of(t).stream()).filter(r -> r.where().tapped()).min(Comparator.comparingDouble(InletRace::after));
  }

  /** The trial without a tap that comes nearest to choking before its end; empty when all are tapped. */
  public static Optional<InletRace> firstToChoke(List<TrialForecast> trials) {
    return trials.stream().flatMap(t -> of(t).stream()).filter(r -> !r.where().tapped()).min(Comparator.comparingDouble(r -> r.after() / r.duration()));
  }
}
