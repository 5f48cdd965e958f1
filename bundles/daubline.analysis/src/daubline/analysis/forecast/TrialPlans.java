package daubline.analysis.forecast;

import daubline.base.TrialStatus;
import daubline.base.Variables;
import daubline.engine.process.BurnInputs;
import daubline.engine.process.BurnQuantity;
import daubline.model.Series;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.session.StudyVariables;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The plans of all trials of a study. Each is forecast from what the team had smelted before it, never from itself or
 * from what came later. The forecasts for figures are reckoned once, when first asked for.
 */
public final class TrialPlans {

  /** No plans. */
  public static final TrialPlans NONE = new TrialPlans(List.of());
  /** Draws that figures of a whole study are made of. */
  public static final int DRAWS = 100;
  /** Seed of forecasts unless somebody gives another. */
  public static final long SEED = 20260101;

  private final List<TrialPlan> plans;
  private List<TrialForecast> forecasts;

  private TrialPlans(List<TrialPlan> plans) {
    this.plans = List.copyOf(plans);
  }

  /** The plans of a study as it stands now. */
  public static TrialPlans of(Study study) {
    return of(study, Overlay.NONE);
  }

  /** The plans of a study with some values of every trial replaced, to try what they would do. */
  public static TrialPlans of(Study study, Overlay overlay) {
    Variables variables = StudyVariables.of(study);
    Map<Trial, Series> trials = new LinkedHashMap<>();
    study.getSeries().forEach(s -> s.getTrials().forEach(t -> trials.put(t, s)));
    Map<Trial, TrialPlan> made = new LinkedHashMap<>();
    List<Double> recoveries = new ArrayList<>();
    trials.keySet().stream().sorted(inTime()).forEach(trial -> {
      TrialPlan plan = plan(trials.get(trial), trial, variables, overlay, recoveries);
      made.put(trial, plan);
      Optional.ofNullable(plan.outcomes().get(BurnQuantity.RECOVERY)).filter(r -> plan.isBurnt()).ifPresent(r -> recoveries.add(r.value()));
    });
    return new TrialPlans(trials.keySet().stream().map(made::get).toList());
  }

  /** Burnt before not burnt, then by date where both have one, then as they stand in the study. */
  private static Comparator<Trial> inTime() {
    return Comparator.comparing((Trial t) -> !isBurnt(t)).thenComparing(t -> t.getOn() == null || t.getOn().isBlank() ? "9999" : t.getOn());
  }

  private static boolean isBurnt(Trial trial) {
    return TrialStatus.of(trial.getStatus()).isBurnt();
  }

  private static TrialPlan plan(Series series, Trial trial, Variables variables, Overlay overlay, List<Double> before) {
    ForecastInputs make = new ForecastInputs(trial, variables, overlay);
    Optional<BurnInputs> inputs = make.build().map(in -> in.withOwnRecoveries(before));
    Outcomes outcomes = new Outcomes(trial, inputs);
    return new TrialPlan(String.valueOf(trial.getId()), nameOf(trial.getName(), trial.getId()), nameOf(series.getName(), series.getId()),
        TrialStatus.of(trial.getStatus()), inputs, ChargeRate.of(trial), make.shape(),
        isBurnt(trial) ? outcomes.all() : Map.of(), make.used(), make.findings());
  }

  private static String nameOf(String name, String id) {
    return name == null || name.isBlank() ? String.valueOf(id) : name;
  }

  /** All plans in the order of the study. */
  public List<TrialPlan> all() {
    return plans;
  }

  /** The plan of one trial. */
  public Optional<TrialPlan> find(String trial) {
    return plans.stream().filter(p -> p.trial().equals(trial)).findFirst();
  }

  /** The forecasts of all trials, for figures and tables of the whole study. */
  public synchronized List<TrialForecast> forecasts() {
    if (forecasts == null) {
      forecasts = plans.stream().map(p -> p.forecast(DRAWS, SEED)).toList();
    }
    return forecasts;
  }
}
