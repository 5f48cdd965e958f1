package daubline.ui.sheet;

import daubline.analysis.forecast.TrialForecast;
import daubline.analysis.forecast.TrialPlan;
import daubline.analysis.forecast.TrialPlans;
import daubline.charts.Figure;
import daubline.charts.ForecastPlots;
import daubline.charts.InletOrder;
import daubline.charts.ShaftSection;
import daubline.ui.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

/** Reckons forecasts behind: the middle course first, then its spread, then the other trials of the series. */
final class ForecastJob extends Job {

  private static final int DRAWS = 300;
  private static final int MOST_DRAWN = 40;

  /**
   * What is to be reckoned.
   *
   * @param plan the trial
   * @param series all trials of its series, itself among them
   * @param study all burnt trials of the study
   * @param withLog whether its charge log replaces the guessed burn rate
   */
  record Task(TrialPlan plan, List<TrialPlan> series, List<TrialPlan> study, boolean withLog) {
  }

  /**
   * What is reckoned so far.
   *
   * @param trial the forecast
   * @param series forecasts of the series; empty until they are reckoned
   * @param millis how long the middle course took
   * @param settled whether nothing more is to come
   * @param drawings drawn from these; made behind too, as drawing libraries take their time at first
   */
  record Result(TrialForecast trial, List<TrialForecast> series, long millis, boolean settled, Drawings drawings) {

    private Result(TrialForecast trial, List<TrialForecast> series, long millis) {
      this(trial, series, millis, false, Drawings.of(trial, List.of(), List.of()));
    }

    private static Result settled(TrialForecast trial, List<TrialForecast> series, List<TrialForecast> study, long millis) {
      return new Result(trial, series, millis, true, Drawings.of(trial, series, study));
    }
  }

  /**
   * The figures of the page.
   *
   * @param section the furnace with temperature and gas
   * @param rise the slag against time
   * @param order which trial of the series chokes first
   * @param against predicted beside observed
   * @param residuals what is left over, by burnt trial of the series
   * @param study what is left over, by burnt trial of the study
   */
  record Drawings(Optional<Figure> section, Optional<Figure> rise, Optional<Figure> order, Optional<Figure> against, Optional<Figure> residuals,
      Optional<Figure> study) {

    private static Drawings of(TrialForecast trial, List<TrialForecast> series, List<TrialForecast> study) {
      List<TrialForecast> burnt = series.stream().filter(f -> f.plan().isBurnt()).toList();
      return new Drawings(ShaftSection.of(trial), ForecastPlots.slagRise(trial),
          InletOrder.of(series, trial.trial()), ForecastPlots.predictedAgainstObserved(burnt),
          ForecastPlots.residuals(burnt), ForecastPlots.residuals(study));
    }
  }

  private final Consumer<Result> taker;
  private volatile Task task;

  /** A job that hands results to the window's thread. */
  ForecastJob(Consumer<Result> taker) {
    super(Words.of("job.forecast"));
    this.taker = taker;
    setSystem(true);
    setPriority(SHORT);
  }

  /** Begins anew with another task; what runs for an older one is dropped. */
  void begin(Task now) {
    task = now;
    cancel();
    schedule();
  }

  /** Whether nothing is to be done. */
  boolean isIdle() {
    return getState() == Job.NONE;
  }

  @Override
  protected IStatus run(IProgressMonitor monitor) {
    Task now = task;
    long start = System.nanoTime();
    TrialForecast middle = now.plan().forecast(0, TrialPlans.SEED, now.withLog());
    long millis = (System.nanoTime() - start) / 1_000_000;
    hand(new Result(middle, List.of(), millis), now);
    hand(new Result(middle, now.series().stream().map(p -> p.forecast(0, TrialPlans.SEED)).toList(), millis), now);
    if (monitor.isCanceled()) {
      return Status.CANCEL_STATUS;
    }
    TrialForecast drawn = now.plan().forecast(DRAWS, TrialPlans.SEED, now.withLog());
    hand(new Result(drawn, List.of(), millis), now);
    Map<TrialPlan, TrialForecast> made = new HashMap<>(Map.of(now.plan(), drawn));
    int draws = now.series().size() > MOST_DRAWN ? 0 : TrialPlans.DRAWS;
    List<TrialForecast> series = made(now.series(), draws, made, monitor);
    // a residual is counted in widths of the interval, so these are always drawn
    List<TrialForecast> study = made(now.study(), TrialPlans.DRAWS, draws > 0 ? made : new HashMap<>(), monitor);
    if (monitor.isCanceled()) {
      return Status.CANCEL_STATUS;
    }
    hand(Result.settled(drawn, series, study, millis), now);
    return Status.OK_STATUS;
  }

  /** Forecasts of these plans, each made once; what is cancelled stays short. */
  private static List<TrialForecast> made(List<TrialPlan> plans, int draws, Map<TrialPlan, TrialForecast> made, IProgressMonitor monitor) {
    List<TrialForecast> all = new ArrayList<>();
    for (TrialPlan plan : plans) {
      if (monitor.isCanceled()) {
        break;
      }
      all.add(made.computeIfAbsent(plan, p -> p.forecast(draws, TrialPlans.SEED)));
    }
    return List.copyOf(all);
  }

  private void hand(Result result, Task now) {
    Display display = Display.getDefault();
    if (!display.isDisposed()) {
      display.asyncExec(() -> {
        if (now == task) {
          taker.accept(result);
        }
      });
    }
  }
}
