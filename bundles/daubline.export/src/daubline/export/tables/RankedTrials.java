package daubline.export.tables;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyRanking;
import daubline.analysis.StudyResults;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.Progress;
import daubline.engine.inference.Ranking;
import java.util.List;

/** The rankings of the trials and sheets that were compared, with the draws and seed of the command ranks. */
final class RankedTrials {

  private RankedTrials() {
  }

  static List<Ranking> of(StudyResults results) {
    List<String> trials = results.comparisons().stream().map(Comparison::trial).distinct().toList();
    List<String> sheets = results.comparisons().stream().filter(Comparison::isTested).map(Comparison::sheet).distinct().toList();
    if (sheets.isEmpty()) {
      return List.of();
    }
    ComparisonOptions usual = ComparisonOptions.standard();
    return StudyRanking.of(results.snapshot(), new ComparisonOptions(true, trials, sheets, usual.draws(), usual.seed(), usual.threads()), Progress.NONE);
  }
}
