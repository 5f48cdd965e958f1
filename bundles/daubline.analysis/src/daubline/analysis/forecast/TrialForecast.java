package daubline.analysis.forecast;

import daubline.base.Finding;
import daubline.base.Trail;
import daubline.engine.process.BurnForecast;
import daubline.engine.process.BurnInputs;
import daubline.model.Series;
import daubline.model.Trial;
import daubline.session.StudySession;
import daubline.session.StudyVariables;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What can be said of a trial before the fire.
 *
 * @param trial id of the trial
 * @param name its name
 * @param forecast the forecast; empty when too little is planned
 * @param used the values that went in, with where they stand
 * @param findings what is missing or doubtful
 */
public record TrialForecast(String trial, String name, Optional<BurnForecast> forecast, List<Trail> used, List<Finding> findings) {

  public TrialForecast {
    used = List.copyOf(used);
    findings = List.copyOf(findings);
  }

  /**
   * Forecasts the trials of a study.
   *
   * @param wanted ids or names of trials; empty for all
   * @param draws courses to draw; 0 gives the middle course alone
   * @param seed seed of all random numbers
   */
  public static List<TrialForecast> of(StudySession session, List<String> wanted, int draws, long seed) {
    List<TrialForecast> forecasts = new ArrayList<>();
    for (Series series : session.study().getSeries()) {
      for (Trial trial : series.getTrials()) {
        if (wanted.isEmpty() || wanted.contains(trial.getId()) || wanted.contains(trial.getName())) {
          forecasts.add(of(session, trial, draws, seed));
        }
      }
    }
    return forecasts;
  }

  private static TrialForecast of(StudySession session, Trial trial, int draws, long seed) {
    ForecastInputs make = new ForecastInputs(trial, StudyVariables.of(session.study()));
    Optional<BurnForecast> forecast = make.build().map((BurnInputs inputs) -> BurnForecast.of(inputs, draws, seed));
    List<Finding> findings = new ArrayList<>(make.findings());
    forecast.ifPresent(f -> findings.addAll(f.findings()));
    return new TrialForecast(trial.getId(), trial.getName() == null ? trial.getId() : trial.getName(), forecast, make.used(), findings);
  }
}
