package daubline.analysis.forecast;

import daubline.base.Finding;
import daubline.base.Trail;
import daubline.engine.process.BurnForecast;
import daubline.engine.process.BurnQuantity;
import daubline.engine.process.Forecast;
import daubline.session.StudySession;
import java.util.List;
import java.util.Optional;

/**
 * What can be said of a trial before the fire.
 *
 * @param plan what it rests on
 * @param forecast the forecast; empty when too little is planned
 * @param findings what is missing or doubtful, and what to beware of
 */
public record TrialForecast(TrialPlan plan, Optional<BurnForecast> forecast, List<Finding> findings) {

  public TrialForecast {
    findings = List.copyOf(findings);
  }

  /** Id of the trial. */
  public String trial() {
    return plan.trial();
  }

  /** Its name. */
  public String name() {
    return plan.name();
  }

  /** The values that went in, with where they stand. */
  public List<Trail> used() {
    return plan.used();
  }

  /** One figure; empty without a forecast. */
  public Optional<Forecast> get(BurnQuantity quantity) {
    return forecast.map(f -> f.get(quantity));
  }

  /** What was observed of it; empty when the trial is not burnt or nobody recorded it. */
  public Optional<Outcome> outcome(BurnQuantity quantity) {
    return Optional.ofNullable(plan.outcomes().get(quantity));
  }

  /**
   * Forecasts the trials of a study.
   *
   * @param wanted ids or names of trials or of series; empty for all
   * @param draws courses to draw; 0 gives the middle course alone
   * @param seed seed of all random numbers
   */
  public static List<TrialForecast> of(StudySession session, List<String> wanted, int draws, long seed) {
    return TrialPlans.of(session.study()).all().stream()
        .filter(p -> wanted.isEmpty() || wanted.contains(p.trial()) || wanted.contains(p.name()) || wanted.contains(p.series()))
        .map(p -> p.forecast(draws, seed)).toList();
  }
}
