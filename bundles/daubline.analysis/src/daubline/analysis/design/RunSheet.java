package daubline.analysis.design;

import daubline.analysis.StudySnapshot;
import daubline.analysis.TrialData;
import daubline.analysis.record.PlanningData.FrozenData;
import daubline.analysis.record.PlanningData.PlannedData;
import daubline.analysis.record.SeriesData;
import daubline.analysis.record.TrialRecord;
import daubline.base.Printed;
import daubline.base.Stage;
import daubline.base.Variable;
import daubline.engine.inference.Statement;
import daubline.engine.process.Cautions;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a team takes to one trial on paper.
 *
 * @param series name of the series
 * @param trial name of the trial
 * @param place its place in the plan, from 1; 0 when it is in no plan
 * @param of how many trials the plan has
 * @param furnace name of its furnace
 * @param on its date, or empty
 * @param settings what is varied, as frozen
 * @param others what else is planned
 * @param roles who does what; lines to fill when nobody was named
 * @param stop when the trial is stopped
 * @param cautions the usual cautions
 * @param plan what stands under the sheet: design, seed, when it was frozen
 */
public record RunSheet(String series, String trial, int place, int of, String furnace, String on, List<Line> settings, List<Line> others,
    List<Line> roles, List<String> stop, List<String> cautions, String plan) {

  private static final List<String> ROLES = List.of("leader", "charger", "bellows", "recorder", "safety watch");

  /** One line: what, and what is planned. */
  public record Line(String what, String planned) {
  }

  public RunSheet {
    settings = List.copyOf(settings);
    others = List.copyOf(others);
    roles = List.copyOf(roles);
    stop = List.copyOf(stop);
    cautions = List.copyOf(cautions);
  }

  /**
   * The sheets of the trials still to be burnt of a series, in the order of the plan; of all its trials when wanted.
   *
   * @param roles who does what, with times, as lines
   * @param stop the stop criteria of the series
   */
  public static List<RunSheet> of(StudySnapshot study, SeriesData series, List<Line> roles, String stop, boolean all) {
    Map<String, PlannedData> frozen = new LinkedHashMap<>();
    Map<String, FrozenData> plans = new LinkedHashMap<>();
    for (FrozenData plan : series.planning().plans()) {
      plan.runs().stream().filter(r -> !r.trial().isEmpty()).forEach(r -> {
        frozen.put(r.trial(), r);
        plans.put(r.trial(), plan);
      });
    }
    List<RunSheet> sheets = new ArrayList<>();
    for (String id : series.trials()) {
      study.trial(id).filter(t -> all || t.status().isToCome())
          .ifPresent(t -> sheets.add(sheet(study, series, t, frozen.get(id), plans.get(id), roles, stop)));
    }
    return sheets;
  }

  private static RunSheet sheet(StudySnapshot study, SeriesData series, TrialData trial, PlannedData run, FrozenData plan, List<Line> roles, String stop) {
    TrialRecord record = study.record().trial(trial.id()).orElseThrow();
    List<Line> settings = new ArrayList<>();
    if (run != null) {
      run.settings().forEach((variable, amount) -> settings.add(new Line(study.variables().find(variable).map(Variable::name).orElse("Reconstruction"),
          study.variables().find(variable).map(v -> Printed.withUnit(amount, v.unit())).orElse(amount.category()))));
    }
    return new RunSheet(series.name(), trial.name(), run == null ? 0 : run.place(), plan == null ? 0 : plan.runs().size(), record.build(), record.on(), settings,
        others(study, trial, run == null ? Set.of() : run.settings().keySet()), roles.isEmpty() ? ROLES.stream().map(r -> new Line(r, "")).toList() : roles, stop(stop), Cautions.all(),
        plan == null ? "Not in a frozen plan." : plan.name() + ", seed " + plan.seed() + ", frozen " + plan.frozenAt() + " by " + plan.engine() + ".");
  }

  private static List<Line> others(StudySnapshot study, TrialData trial, Set<String> shown) {
    List<Line> others = new ArrayList<>();
    for (Variable v : study.variables().all()) {
      List<Statement> planned = trial.at(Stage.PLANNED, v.id());
      if (!planned.isEmpty() && !shown.contains(v.id())) {
        others.add(new Line(v.name(), Printed.withUnit(planned.get(0).amount(), v.unit())));
      }
    }
    return others;
  }

  private static List<String> stop(String text) {
    return text.isBlank() ? List.of() : List.of(text.split("(?<=\\.)\\s+"));
  }
}
