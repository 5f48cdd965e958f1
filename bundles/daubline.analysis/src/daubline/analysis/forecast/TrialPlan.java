package daubline.analysis.forecast;

import daubline.base.Finding;
import daubline.base.Trail;
import daubline.base.TrialStatus;
import daubline.engine.process.BurnForecast;
import daubline.engine.process.BurnInputs;
import daubline.engine.process.BurnQuantity;
import daubline.engine.process.Spread;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is known of a trial before it is lit, and what came of it; needs no session, so it can be reckoned behind.
 *
 * @param trial id of the trial
 * @param name its name
 * @param series name of its series
 * @param status where it stands
 * @param inputs what the process engine takes; empty when too little is planned
 * @param logged charcoal burnt, kg/s, from three timed charges or more of its own log
 * @param shape its furnace
 * @param outcomes what was observed, by figure
 * @param used the values that went in, with where they stand
 * @param findings what is missing or doubtful
 */
public record TrialPlan(String trial, String name, String series, TrialStatus status, Optional<BurnInputs> inputs, Optional<Spread> logged,
    FurnaceShape shape, Map<BurnQuantity, Outcome> outcomes, List<Trail> used, List<Finding> findings) {

  public TrialPlan {
    EnumMap<BurnQuantity, Outcome> copy = new EnumMap<>(BurnQuantity.class);
    copy.putAll(outcomes);
    outcomes = Collections.unmodifiableMap(copy);
    used = List.copyOf(used);
    findings = List.copyOf(findings);
  }

  /** Whether it was lit and is over. */
  public boolean isBurnt() {
    return status.isBurnt();
  }

  /** Whether its own charge log replaces the guessed burn rate unless somebody asks otherwise: while it burns, not once it is over. */
  public boolean followsLog() {
    return logged.isPresent() && !isBurnt();
  }

  /** The forecast, with the charge log while the trial burns and without it otherwise. */
  public TrialForecast forecast(int draws, long seed) {
    return forecast(draws, seed, followsLog());
  }

  /**
   * The forecast.
   *
   * @param draws courses to draw; 0 gives the middle course alone
   * @param seed seed of all random numbers
   * @param withLog whether the charge log replaces the guessed burn rate, where there is one
   */
  public TrialForecast forecast(int draws, long seed, boolean withLog) {
    Optional<BurnInputs> taken = inputs.map(in -> withLog && logged.isPresent() ? in.withBurnRate(logged.get()) : in);
    Optional<BurnForecast> forecast = taken.map(in -> BurnForecast.of(in, draws, seed));
    List<Finding> all = new ArrayList<>(findings);
    forecast.ifPresent(f -> f.findings().forEach(x -> all.add(x.at(name).about(trial, ""))));
    return new TrialForecast(this, forecast, all);
  }
}
