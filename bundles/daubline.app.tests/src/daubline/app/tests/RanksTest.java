package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.SettingEditor;
import daubline.analysis.StudyRanking;
import daubline.analysis.StudyRepeats;
import daubline.analysis.StudySnapshot;
import daubline.analysis.Target;
import daubline.criteria.Repeats;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.Progress;
import daubline.engine.inference.Ranking;
import daubline.ui.Parts;
import daubline.ui.Words;
import daubline.ui.compare.ComparisonView;
import daubline.ui.compare.RanksView;
import daubline.ui.compare.Selection;
import daubline.ui.compare.WeightsView;
import daubline.ui.study.Comparing;
import daubline.ui.study.OpenStudy;
import daubline.ui.views.FigureCanvas;
import java.util.List;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** How far the order can be relied on, what the weights do to it, and the drawings of a pair; reckoned behind, followed live, undone to the same bytes. */
class RanksTest {

  private static final String TOLERANCE = "criterion.base_internal_diameter.tolerance";
  private static final String WEIGHT = "weight.group.geometry";

  @BeforeEach
  void perspective() throws Exception {
    PlatformUI.getWorkbench().showPerspective("daubline.app.compare", Window.page().getWorkbenchWindow());
    Window.page().resetPerspective();
    Window.pump();
  }

  @AfterEach
  void clear() {
    Selection.set(null);
    Comparing.choose(Comparing.options().against(), false, false);
    Window.clear();
  }

  private static void press(String id) {
    Button button = Window.find(id, Button.class);
    Window.waitFor(id, button::isEnabled);
    button.notifyListeners(SWT.Selection, new Event());
    Window.pump();
  }

  private static void undo() throws Exception {
    PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand("org.eclipse.ui.edit.undo", null);
    Window.pump();
  }

  private static RanksView ranked(OpenStudy study) throws Exception {
    Window.waitForResults(study);
    RanksView view = Window.view(Parts.RANKS, RanksView.class);
    waitForRanks();
    return view;
  }

  private static void waitForRanks() {
    Window.waitFor("the ranking", () -> Window.find("ranks.again", Button.class).isEnabled());
  }

  private static String cell(RanksView view, String tab, int column, int row) {
    view.turnTo(tab);
    Window.pump();
    return view.grid(tab).model().cell(column, row).text();
  }

  private static String percent(double share) {
    return Math.round(share * 100) + " %";
  }

  @Test
  void everyTabSaysWhatTheEngineSays() throws Exception {
    OpenStudy study = Window.demonstration();
    RanksView view = ranked(study);
    StudySnapshot snapshot = study.results().orElseThrow().snapshot();
    Target target = Selection.target(study.compared().orElseThrow()).orElseThrow();
    Ranking ranking = StudyRanking.of(snapshot, ComparisonOptions.standard(), target, Progress.NONE);
    assertTrue(Window.find("ranks-said", Label.class).getText().contains(target.sheet().name()));
    for (int row = 0; row < ranking.places().size(); row++) {
      Ranking.Place place = ranking.places().get(row);
      assertEquals(place.trialName(), cell(view, "ranks.ranks", 0, row));
      assertEquals(percent(place.acceptability()[0]), cell(view, "ranks.ranks", 4, row), "first places of " + place.trialName());
    }
    Ranking.Place first = ranking.places().get(0);
    assertEquals(percent(first.wins().get(ranking.places().get(1).trial())), cell(view, "ranks.pairs", 2, 0));
    assertTrue(cell(view, "ranks.weights", 2, 0).contains(StudyRanking.heavier(ranking, first, StudyRanking.usualWeights(snapshot.settings())).get(0).criterion()));
    Ranking.Discrimination strongest = ranking.criteria().stream().filter(c -> c.name().equals(cell(view, "ranks.criteria", 0, 0))).findFirst().orElseThrow();
    assertTrue(ranking.criteria().stream().allMatch(c -> Math.abs(c.share()) <= Math.abs(strongest.share())), "the strongest first");
    assertEquals(percent(strongest.share()), cell(view, "ranks.criteria", 1, 0));
    view.turnTo("ranks.equal");
    assertEquals(StudyRanking.equallyGood(snapshot, ranking).groups().size(), view.grid("ranks.equal").model().rows());
    List<Comparison> all = study.results().orElseThrow().ranked(target.sheet().id());
    for (int row = 0; row < all.size(); row++) {
      boolean ruledOut = daubline.engine.inference.Exclusion.of(all.get(row), snapshot.settings().alpha()).isRuledOut();
      assertEquals(Words.of(ruledOut ? "ranks.ruledout" : "rank.notruledout"), cell(view, "ranks.ruled", 1, row), all.get(row).trialName());
    }
    assertTrue(IntStream.range(0, all.size()).anyMatch(row -> cell(view, "ranks.ruled", 1, row).equals(Words.of("ranks.ruledout"))), "the demonstration rules some out");
  }

  @Test
  void itIsStoppedAndBegunAgain() throws Exception {
    OpenStudy study = Window.demonstration();
    ranked(study);
    press("ranks.again");
    Window.find("ranks.cancel", Button.class).notifyListeners(SWT.Selection, new Event());
    waitForRanks();
    assertTrue(Window.find("ranks-said", Label.class).getText().startsWith(Words.of("ranks.stopped", "").substring(0, 7)), Window.find("ranks-said", Label.class).getText());
    press("ranks.again");
    waitForRanks();
    assertFalse(Window.find("ranks-said", Label.class).getText().startsWith(Words.of("ranks.stopped", "").substring(0, 7)));
  }

  @Test
  void theSpreadOfRepeatsBecomesTheToleranceAndIsUndone() throws Exception {
    OpenStudy study = Window.demonstration();
    RanksView view = ranked(study);
    StudyRepeats repeats = StudyRepeats.of(study.results().orElseThrow().snapshot(), ComparisonOptions.standard());
    Repeats spread = repeats.spreads().stream().filter(r -> r.spread() > 0).findFirst().orElseThrow();
    String before = study.session().digest();
    view.turnTo("ranks.repeats");
    view.grid("ranks.repeats").select(1, repeats.spreads().indexOf(spread));
    Window.pump();
    press("repeats.keep");
    SettingEditor editor = new SettingEditor(study.session());
    SettingEditor.Kept kept = editor.kept("criterion." + spread.criterion() + ".tolerance").orElseThrow();
    assertEquals(spread.tolerance(), Double.parseDouble(kept.value()), 1e-9 * spread.tolerance());
    assertEquals(StudyRepeats.source(spread), kept.source());
    assertEquals(Words.of("repeats.kept"), study.session().undoLabel().orElseThrow());
    undo();
    assertEquals(before, study.session().digest());
    Window.waitForResults(study);
    waitForRanks();
    press("repeats.keep.all");
    assertEquals(repeats.spreads().stream().filter(r -> r.spread() > 0).count(), study.session().study().getSettings().stream()
        .filter(s -> s.getSource() != null && s.getSource().startsWith("spread of repeats")).count());
    undo();
    assertEquals(before, study.session().digest(), "one change for all");
  }

  @Test
  void aTypedWeightReRanksAtOnceAndIsUndone() throws Exception {
    OpenStudy study = Window.demonstration();
    ComparisonView comparison = Window.view(Parts.COMPARISON, ComparisonView.class);
    WeightsView weights = Window.view(Parts.WEIGHTS, WeightsView.class);
    Window.waitForResults(study);
    String before = study.session().digest();
    List<Double> agreements = study.results().orElseThrow().comparisons().stream().map(Comparison::agreement).toList();
    weights.reveal(WEIGHT);
    Window.type(weights.grid().control(), "20");
    assertEquals("20.0", new SettingEditor(study.session()).kept(WEIGHT).orElseThrow().value());
    Window.waitForResults(study);
    assertNotEquals(agreements, study.results().orElseThrow().comparisons().stream().map(Comparison::agreement).toList());
    List<Comparison> ranked = study.compared().orElseThrow().results().ranked(Selection.target(study.compared().orElseThrow()).orElseThrow().sheet().id());
    assertEquals(ranked.get(0).trialName(), comparison.ranking().model().cell(1, 0).text());
    assertTrue(comparison.ranking().model().cell(2, 0).text().startsWith(Long.toString(Math.round(ranked.get(0).agreement()))), "the new agreement is shown");
    undo();
    assertEquals(before, study.session().digest());
    Window.waitForResults(study);
    assertEquals(agreements, study.results().orElseThrow().comparisons().stream().map(Comparison::agreement).toList(), "the old order again");
  }

  @Test
  void aToleranceIsTypedWithItsUnitAndSourceAndTakenBackToTheStandard() throws Exception {
    OpenStudy study = Window.demonstration();
    WeightsView weights = Window.view(Parts.WEIGHTS, WeightsView.class);
    Window.waitForResults(study);
    SettingEditor editor = new SettingEditor(study.session());
    weights.reveal(TOLERANCE);
    Window.type(weights.grid().control(), "6 cm");
    assertEquals(0.06, Double.parseDouble(editor.kept(TOLERANCE).orElseThrow().value()), 1e-12);
    int row = weights.grid().selected().orElseThrow().y;
    row = weights.grid().model().cell(0, row).text().contains("olerance") && weights.grid().model().cell(1, row).text().equals("60") ? row : row - 1;
    assertEquals("60", weights.grid().model().cell(1, row).text(), "shown in its own unit");
    weights.grid().select(4, row);
    Window.type(weights.grid().control(), "three bases measured twice");
    assertEquals("three bases measured twice", editor.kept(TOLERANCE).orElseThrow().source());
    weights.grid().select(1, row);
    String before = study.session().digest();
    Window.type(weights.grid().control(), "wide");
    assertTrue(Window.find("weights-said", Label.class).getText().contains("wide"), "what is not understood is said");
    assertEquals(before, study.session().digest());
    weights.grid().select(1, row);
    press("weights.tostandard");
    assertTrue(editor.kept(TOLERANCE).isEmpty());
    undo();
    assertEquals(before, study.session().digest());
  }

  @Test
  void theDrawingsFollowThePairAndSayWhatTheyShow() throws Exception {
    OpenStudy study = Window.demonstration();
    Window.waitForResults(study);
    ComparisonView comparison = Window.view(Parts.COMPARISON, ComparisonView.class);
    IViewPart beside = Window.view(Parts.BESIDE, IViewPart.class);
    for (int trial = 0; trial < 2; trial++) {
      comparison.grid().select(1, trial);
      Window.pump();
      Comparison pair = Selection.get().orElseThrow();
      Window.waitFor("the drawing of " + pair.trialName(), () -> caption().contains(pair.trialName()));
      String caption = caption();
      assertTrue(caption.contains(pair.trialName()) && caption.contains(pair.sheetName()), caption);
    }
    beside.setFocus();
    Combo what = Window.find("beside", Combo.class);
    for (int i = 1; i < what.getItemCount(); i++) {
      what.select(i);
      String before = caption();
      what.notifyListeners(SWT.Selection, new Event());
      Window.waitFor("another drawing", () -> !caption().equals(before));
      assertFalse(caption().equals(Words.of("figures.nothing")), what.getText());
      assertFalse(caption().matches("(?i).*\\b(proved|proven|match(es)?|true)\\b.*"), caption());
    }
  }

  /** What a screen reader is told of the drawing. */
  private static String caption() {
    FigureCanvas canvas = Window.find("figure-canvas", FigureCanvas.class);
    return Window.all(canvas.getParent()).stream().filter(Label.class::isInstance).map(l -> ((Label) l).getText()).findFirst().orElseThrow();
  }
}
