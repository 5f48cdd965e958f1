package daubline.charts;

import daubline.analysis.StudyResults;
import daubline.analysis.forecast.TrialForecast;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A figure of the publication that is made of the forecasts of all trials. */
final class ForecastFigures implements FigureSpec {

  private final String id;
  private final String title;
  private final Function<List<TrialForecast>, Optional<Figure>> make;

  private ForecastFigures(String id, String title, Function<List<TrialForecast>, Optional<Figure>> make) {
    this.id = id;
    this.title = title;
    this.make = make;
  }

  /** All of them, in the order of the publication. */
  static List<FigureSpec> all() {
    return List.of(new ProfileFigures(),
        new ForecastFigures("slag-inlet", "Slag Against the Air Inlet", trials -> InletOrder.of(trials, "")),
        new ForecastFigures("forecast-observed", "Predicted and Observed", trials -> ForecastPlots.predictedAgainstObserved(burnt(trials))),
        new ForecastFigures("forecast-residuals", "What Predictions Left Over", trials -> ForecastPlots.residuals(burnt(trials))));
  }

  private static List<TrialForecast> burnt(List<TrialForecast> trials) {
    return trials.stream().filter(t -> t.plan().isBurnt()).toList();
  }

  @Override
  public String table() {
    return "predictions";
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public Optional<Figure> build(StudyResults results) {
    return make.apply(results.snapshot().plans().forecasts());
  }
}
