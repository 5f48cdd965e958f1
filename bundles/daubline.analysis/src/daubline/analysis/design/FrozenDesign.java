package daubline.analysis.design;

import daubline.analysis.StudySnapshot;
import daubline.analysis.record.PlanningData.FrozenData;
import daubline.analysis.record.PlanningData.PlannedData;
import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Run;
import daubline.engine.design.Strata;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Makes the design of a frozen plan again, for its review. */
public final class FrozenDesign {

  private FrozenDesign() {
  }

  /** The last frozen plan of a series. */
  public static Optional<FrozenData> last(DesignBrief brief) {
    List<FrozenData> plans = brief.series().planning().plans();
    return plans.isEmpty() ? Optional.empty() : Optional.of(plans.get(plans.size() - 1));
  }

  /**
   * The design of the last frozen plan.
   *
   * @return empty when nothing was frozen
   * @throws IllegalArgumentException when the factors of the series were changed since, naming what no longer fits
   */
  public static Optional<Design> of(StudySnapshot study, DesignBrief brief) {
    return last(brief).map(plan -> {
      List<Run> runs = new ArrayList<>();
      for (PlannedData run : plan.runs().stream().sorted(Comparator.comparingInt(PlannedData::place)).toList()) {
        runs.add(new Run(setting(study, brief, run), run.furnace() - 1, run.day() > 0 ? run.day() - 1 : runs.size(), false));
      }
      return new Design(plan.name(), brief.factors(), runs, List.of(plan.restriction()));
    });
  }

  /** How alike trials of a furnace and of a day were thought to be when it was frozen. */
  public static Strata strata(FrozenData plan) {
    return new Strata(Double.isNaN(plan.furnaceRatio()) ? 1 : plan.furnaceRatio(), Double.isNaN(plan.dayRatio()) ? 0 : plan.dayRatio());
  }

  private static double[] setting(StudySnapshot study, DesignBrief brief, PlannedData run) {
    return brief.factors().stream().mapToDouble((Factor f) -> Optional.ofNullable(run.settings().get(f.id()))
        .flatMap(a -> BurntTrials.code(study.variables(), f, a))
        .orElseThrow(() -> new IllegalArgumentException("the frozen plan has no setting of " + f.name() + " at place " + run.place()
            + ": the factors were changed since it was frozen"))).toArray();
  }
}
