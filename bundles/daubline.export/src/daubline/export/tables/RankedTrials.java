package daubline.export.tables;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyRanking;
import daubline.analysis.StudyResults;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.Progress;
import daubline.engine.inference.Ranking;
import java.util.List;

/** The rankings of the trials and sheets that were compared, with the draws, seed and tolerances of the comparison. */
final class RankedTrials {

  private RankedTrials() {
  }

  /** With what the rankings were made, for the notes of a table. */
  static String note(StudyResults results) {
    ComparisonOptions o = results.options();
    return o.draws() + " draws, seed " + o.seed() + "; tolerances: " + (o.repeatsAsTolerance() ? "the spread of repeats where it is known, else the settings of the study"
        : "the settings of the study") + ".";
  }

  static List<Ranking> of(StudyResults results) {
    List<String> trials = results.comparisons().stream().map(Comparison::trial).distinct().toList();
    List<String> sheets = results.comparisons().stream().filter(Comparison::isTested).map(Comparison::sheet).distinct().toList();
    if (sheets.isEmpty()) {
      return List.of();
    }
    ComparisonOptions asked = results.options();
    return StudyRanking.of(results.snapshot(), new ComparisonOptions(true, trials, sheets, asked.draws(), asked.seed(), asked.threads(), asked.against(),
        asked.repeatsAsTolerance()), Progress.NONE);
  }
}
