package daubline.analysis.design;

import daubline.analysis.StudySnapshot;
import daubline.analysis.TrialData;
import daubline.analysis.record.PlanningData.FrozenData;
import daubline.analysis.record.PlanningData.PlannedData;
import daubline.analysis.record.SeriesData;
import daubline.analysis.record.TrialRecord;
import daubline.base.Amount;
import daubline.base.Printed;
import daubline.base.Stage;
import daubline.base.TrialStatus;
import daubline.base.Unit;
import daubline.base.Variable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Something done otherwise than the frozen plan said.
 *
 * @param trial name of the trial
 * @param what what differs, such as "Air flow"
 * @param planned as frozen
 * @param done as it was
 * @param because what the team says about it, or empty
 */
public record Deviation(String trial, String what, String planned, String done, String because) {

  /** A setting within this share of the frozen one is as planned: scales and bellows are no better (common practice, no source). */
  static final double SAME = 0.03;

  /** Every deviation from the last frozen plan of a series; empty when nothing was frozen. */
  public static List<Deviation> of(StudySnapshot study, SeriesData series) {
    List<FrozenData> plans = series.planning().plans();
    return plans.isEmpty() ? List.of() : new Finder(study, plans.get(plans.size() - 1)).find();
  }

  /** Looks through one plan. */
  private static final class Finder {
    private final StudySnapshot study;
    private final FrozenData plan;
    private final List<Deviation> found = new ArrayList<>();

    Finder(StudySnapshot study, FrozenData plan) {
      this.study = study;
      this.plan = plan;
    }

    List<Deviation> find() {
      for (PlannedData run : plan.runs()) {
        Optional<TrialData> trial = study.trial(run.trial());
        if (trial.isEmpty()) {
          found.add(new Deviation("place " + run.place(), "trial", "planned", "deleted", run.deviation()));
        } else {
          status(trial.get(), run);
          run.settings().forEach((variable, amount) -> setting(trial.get(), run, variable, amount));
        }
      }
      order();
      furnaces();
      return List.copyOf(found);
    }

    private void status(TrialData trial, PlannedData run) {
      if (trial.status() == TrialStatus.FAILED || trial.status() == TrialStatus.ABANDONED) {
        found.add(new Deviation(trial.name(), "trial", "to be burnt", trial.status().word(), run.deviation()));
      }
    }

    private void setting(TrialData trial, PlannedData run, String variable, Amount frozen) {
      Optional<Variable> known = study.variables().find(variable);
      for (Stage stage : List.of(Stage.AS_FIRED, Stage.AS_BUILT, Stage.PLANNED)) {
        if (known.isPresent() && !trial.at(stage, variable).isEmpty()) {
          Amount done = trial.at(stage, variable).get(0).amount();
          if (!done.isMissing() && differs(frozen, done)) {
            Unit unit = known.get().unit();
            found.add(new Deviation(trial.name(), known.get().name(), Printed.withUnit(frozen, unit), Printed.withUnit(done, unit) + " " + stage.word(),
                run.deviation()));
          }
          return;
        }
      }
    }

    private static boolean differs(Amount frozen, Amount done) {
      if (frozen.isNumber() && done.isNumber()) {
        return Math.abs(frozen.value() - done.value()) > SAME * Math.max(Math.abs(frozen.value()), Math.abs(done.value()));
      }
      return frozen.kind() != done.kind() || !frozen.category().equals(done.category());
    }

    /** Burnt in another order: a trial dated before one that stood in front of it. */
    private void order() {
      String latest = "";
      String by = "";
      for (PlannedData run : plan.runs().stream().sorted(Comparator.comparingInt(PlannedData::place)).toList()) {
        String on = isBurnt(run) ? study.record().trial(run.trial()).map(TrialRecord::on).orElse("") : "";
        if (!on.isBlank() && on.compareTo(latest) < 0) {
          found.add(new Deviation(name(run), "order", "after " + by, "burnt " + on + ", before it", run.deviation()));
        } else if (!on.isBlank()) {
          latest = on;
          by = name(run);
        }
      }
    }

    private boolean isBurnt(PlannedData run) {
      return study.trial(run.trial()).filter(t -> t.status().isBurnt()).isPresent();
    }

    private String name(PlannedData run) {
      return study.trial(run.trial()).map(TrialData::name).orElse("place " + run.place());
    }

    /** Trials that were to share a furnace and stand in two, or the other way round. */
    private void furnaces() {
      Map<Integer, String> builds = new LinkedHashMap<>();
      for (PlannedData run : plan.runs()) {
        String build = study.record().trial(run.trial()).map(TrialRecord::build).orElse("");
        String before = build.isBlank() ? build : builds.putIfAbsent(run.furnace(), build);
        if (before != null && !before.equals(build)) {
          found.add(new Deviation(name(run), "furnace", before, build, run.deviation()));
        }
      }
    }
  }
}
