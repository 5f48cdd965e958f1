package daubline.ui.study;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyResults;
import daubline.analysis.Target;
import daubline.engine.inference.ComparisonSettings;
import java.util.List;
import java.util.Optional;

/**
 * A comparison as the person chose it.
 *
 * @param results what was worked out
 * @param options what was asked for
 * @param targets what the trials were compared with, in order
 * @param settings weights, tolerances and limits that were used
 */
public record Compared(StudyResults results, ComparisonOptions options, List<Target> targets, ComparisonSettings settings) {

  public Compared {
    targets = List.copyOf(targets);
  }

  static Compared of(StudyResults results, ComparisonOptions options) {
    return new Compared(results, options, options.targets(results.snapshot()), options.settingsOf(results.snapshot()));
  }

  /** The target with an id. */
  public Optional<Target> target(String id) {
    return targets.stream().filter(t -> t.sheet().id().equals(id)).findFirst();
  }
}
