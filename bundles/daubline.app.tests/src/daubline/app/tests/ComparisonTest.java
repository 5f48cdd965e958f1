package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.StudyResults;
import daubline.base.TrialKind;
import daubline.engine.inference.Comparison;
import daubline.ui.Parts;
import daubline.ui.compare.ComparisonView;
import daubline.ui.compare.ReasonsView;
import daubline.ui.study.Chosen;
import daubline.ui.study.OpenStudy;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The comparison on the screen is the comparison that was worked out: pairs, ranking, reasons, origins. */
class ComparisonTest {

  @AfterEach
  void clear() {
    Window.clear();
  }

  @Test
  void gridRankingAndReasonsShowTheResults() throws Exception {
    OpenStudy study = Window.demonstration();
    Window.waitForResults(study);
    ComparisonView view = Window.view(Parts.COMPARISON, ComparisonView.class);
    ReasonsView reasons = Window.view(Parts.REASONS, ReasonsView.class);
    StudyResults results = study.results().orElseThrow();
    long compared = results.snapshot().trials().stream().filter(t -> t.isCompared(false)).count();
    assertTrue(compared >= 5, "the demonstration has enough trials: " + compared);
    assertEquals(compared, view.grid().model().rows());
    assertEquals(results.snapshot().sheets().size() + 1, view.grid().model().columns());
    assertTrue(results.snapshot().trials().stream().anyMatch(t -> t.kind() == TrialKind.DEMONSTRATION), "one is for show");

    view.grid().select(1, 0);
    Window.pump();
    List<Comparison> column = results.comparisons().stream().filter(c -> c.sheet().equals(results.snapshot().sheets().get(0).sheet().id()))
        .sorted(java.util.Comparator.comparingDouble((Comparison c) -> -c.agreement())).toList();
    for (int row = 0; row < column.size(); row++) {
      assertEquals(column.get(row).trialName(), view.ranking().model().cell(1, row).text(), "rank " + (row + 1));
      assertTrue(view.ranking().model().cell(4, row).text().endsWith("%"), "coverage stands beside agreement");
    }
    assertEquals(results.comparisons().get(0).criteria().size(), reasons.grid().model().rows());
    reasons.grid().select(1, 0);
    Window.pump();
    assertFalse(Chosen.trail().orElseThrow().what().isEmpty());
  }

  @Test
  void noCellPromisesMoreThanAnExperimentCan() throws Exception {
    OpenStudy study = Window.demonstration();
    Window.waitForResults(study);
    ComparisonView view = Window.view(Parts.COMPARISON, ComparisonView.class);
    for (int row = 0; row < view.grid().model().rows(); row++) {
      for (int column = 0; column < view.grid().model().columns(); column++) {
        String cell = view.grid().model().cell(column, row).toString();
        assertFalse(cell.matches("(?i).*\\b(proved|proven|match(es)?|true)\\b.*"), cell);
      }
    }
  }
}
