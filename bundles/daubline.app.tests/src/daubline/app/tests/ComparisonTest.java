package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.Against;
import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyComparison;
import daubline.analysis.StudyResults;
import daubline.analysis.Target;
import daubline.base.Trail;
import daubline.base.TrialKind;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.CriterionResult;
import daubline.ui.Parts;
import daubline.ui.compare.ComparisonView;
import daubline.ui.compare.ReasonsView;
import daubline.ui.compare.Selection;
import daubline.ui.compare.WeightsView;
import daubline.ui.look.MarkShape;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.study.Chosen;
import daubline.ui.study.Comparing;
import daubline.ui.study.OpenStudy;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The comparison on the screen is the comparison that was worked out: pairs, ranking, reasons, origins. */
class ComparisonTest {

  @BeforeEach
  void perspective() throws Exception {
    PlatformUI.getWorkbench().showPerspective("daubline.app.compare", Window.page().getWorkbenchWindow());
  }

  @AfterEach
  void clear() {
    Selection.set(null);
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

  /** Presses a mouse button in the middle of a cell, counted with the heading row. */
  private static void click(NatTable table, int column, int row) {
    Rectangle cell = table.getBoundsByPosition(column, row);
    Event event = new Event();
    event.button = 1;
    event.x = cell.x + cell.width / 2;
    event.y = cell.y + cell.height / 2;
    event.type = SWT.MouseDown;
    table.notifyListeners(SWT.MouseDown, event);
    event.type = SWT.MouseUp;
    table.notifyListeners(SWT.MouseUp, event);
    Window.pump();
  }

  /** Every end of a trail, such as a text as typed, a citation or a person. */
  private static List<Trail> ends(Trail trail) {
    return trail.from().isEmpty() ? List.of(trail) : trail.from().stream().flatMap(t -> ends(t).stream()).toList();
  }

  @Test
  void twoActionsLeadFromAnyNumberToItsSource() throws Exception {
    OpenStudy study = Window.demonstration();
    Window.waitForResults(study);
    Window.view(Parts.COMPARISON, ComparisonView.class);
    ReasonsView reasons = Window.view(Parts.REASONS, ReasonsView.class);
    Window.view(Parts.FIGURES, org.eclipse.ui.IViewPart.class);
    NatTable map = Window.find("pairs", NatTable.class);
    click(map, 1, 1);
    Comparison pair = Selection.get().orElseThrow();
    CriterionResult tested = pair.criteria().stream().filter(CriterionResult::isTested).findFirst().orElseThrow();
    int row = pair.criteria().indexOf(tested);
    assertEquals(tested.name(), reasons.grid().model().cell(1, row).text(), "the first action shows the reasons of the cell");
    click(reasons.grid().control(), 2, row + 1);
    assertEquals(tested.trail(), Chosen.trail().orElseThrow());
    assertTrue(Window.page().isPartVisible(Window.page().findView(Parts.WHERE_FROM)), "the second action brings Where From");
    Tree tree = Window.find("wherefrom", Tree.class);
    List<String> shown = new ArrayList<>();
    texts(tree.getItems(), shown);
    List<Trail> ends = ends(tested.trail());
    assertTrue(ends.stream().anyMatch(e -> e.what().equals("citation") || e.what().equals("as typed") || e.what().equals("recorded by")), ends.toString());
    ends.forEach(e -> assertTrue(shown.stream().anyMatch(t -> t.contains(e.value())), e + " in " + shown));
  }

  private static void texts(TreeItem[] items, List<String> into) {
    for (TreeItem item : items) {
      into.add(item.getText());
      texts(item.getItems(), into);
    }
  }

  @Test
  void theMapOfCriteriaIsWalkedByKeysAndSaysItsVerdictsInWords() throws Exception {
    OpenStudy study = Window.demonstration();
    Window.waitForResults(study);
    ComparisonView view = Window.view(Parts.COMPARISON, ComparisonView.class);
    Window.view(Parts.REASONS, ReasonsView.class);
    Window.choose("compare.map", 1);
    view.grid().select(1, 0);
    Window.pump();
    String first = Selection.criterion();
    NatTable map = view.grid().control();
    Window.key(map, (char) 0, SWT.ARROW_DOWN);
    Window.key(map, (char) 0, SWT.ARROW_RIGHT);
    Comparison pair = Selection.get().orElseThrow();
    assertFalse(first.isEmpty() || first.equals(Selection.criterion()), "the arrow leads to the next criterion");
    CriterionResult result = pair.criteria().stream().filter(r -> r.criterion().equals(Selection.criterion())).findFirst().orElseThrow();
    assertEquals(view.grid().model().cell(0, 1).text().split("\n")[0], pair.trialName());
    assertTrue(view.grid().model().cell(2, 1).text().startsWith(daubline.ui.Words.of(result.verdict())), view.grid().model().cell(2, 1).text());
    assertEquals(MarkShape.of(result.verdict()), view.grid().model().cell(2, 1).mark());
    assertEquals(result.trail(), Chosen.trail().orElseThrow());
  }

  @Test
  void whatTrialsAreComparedWithIsChosenAndRemembered() throws Exception {
    OpenStudy study = Window.demonstration();
    Window.waitForResults(study);
    ComparisonView view = Window.view(Parts.COMPARISON, ComparisonView.class);
    int alone = view.grid().model().columns();
    try {
      for (Against against : Against.values()) {
        Window.choose("compare.against", against.ordinal());
        Window.waitFor("the comparison against " + against, () -> study.isSettled() && study.compared().orElseThrow().options().against() == against);
        assertEquals(against, Comparing.options().against(), "remembered");
        StudyResults asked = StudyComparison.of(study.session(), ComparisonOptions.standard().against(against));
        Target last = ComparisonOptions.standard().against(against).targets(asked.snapshot()).getLast();
        assertEquals(last.sheet().name(), view.grid().model().heading(view.grid().model().columns() - 1));
        view.grid().select(view.grid().model().columns() - 1, 0);
        Window.pump();
        List<Comparison> ranked = asked.ranked(last.sheet().id());
        for (int row = 0; row < ranked.size(); row++) {
          assertEquals(ranked.get(row).trialName(), view.ranking().model().cell(1, row).text(), against + ", rank " + (row + 1));
        }
      }
      assertTrue(view.grid().model().columns() > alone, "each other trial is one more column");
      Window.view(Parts.WEIGHTS, WeightsView.class);
      Button shows = Window.find("compare.demonstrations", Button.class);
      int rows = view.grid().model().rows();
      shows.setSelection(true);
      shows.notifyListeners(SWT.Selection, new Event());
      Window.waitFor("demonstrations", () -> study.isSettled() && view.grid().model().rows() > rows);
      assertTrue(study.results().orElseThrow().comparisons().stream().map(Comparison::trial).distinct().count() < view.grid().model().rows(),
          "what is published leaves demonstrations out");
    } finally {
      Comparing.choose(Against.SHEET, false, false);
    }
  }

  @Test
  void aTrialOfTheRankingIsOpenedByEnterAndTheClaimBehindAReasonToo() throws Exception {
    OpenStudy study = Window.demonstration();
    Window.waitForResults(study);
    ComparisonView view = Window.view(Parts.COMPARISON, ComparisonView.class);
    Window.waitFor("the ranking", () -> view.ranking().model().rows() > 1);
    view.ranking().select(1, 1);
    String wanted = view.ranking().model().cell(1, 1).text().lines().findFirst().orElseThrow();
    Window.key(view.ranking().control(), SWT.CR, SWT.CR);
    assertEquals(wanted, OpenStudy.nameOf(((SheetEditor) Window.page().getActiveEditor()).object()));
    ReasonsView reasons = Window.view(Parts.REASONS, ReasonsView.class);
    reasons.grid().select(1, 0);
    Window.key(reasons.grid().control(), SWT.CR, SWT.CR);
    assertTrue(((SheetEditor) Window.page().getActiveEditor()).object() instanceof daubline.model.EvidenceSheet, "the sheet is opened");
  }
}
