package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.design.SeriesSetup;
import daubline.engine.design.advise.Question;
import daubline.model.Series;
import daubline.session.StudySession;
import daubline.ui.plan.RunSheetFile;
import daubline.ui.study.OpenStudy;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.selection.SelectionLayer;
import org.eclipse.nebula.widgets.nattable.selection.command.MoveSelectionCommand;
import org.eclipse.nebula.widgets.nattable.selection.command.SelectCellCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An empty series becomes a frozen, printable plan by typing and pressing buttons; burnt trials yield effects and a suggestion. */
class PlanTest {


  @TempDir
  Path folder;

  @AfterEach
  void clear() {
    Window.clear();
  }

  private static void press(String id) {
    Button button = Window.find(id, Button.class);
    Window.waitFor(id, button::isEnabled);
    button.notifyListeners(SWT.Selection, new Event());
    Window.pump();
  }

  /** Selects the second cell of the row with a name. */
  private static void select(NatTable grid, String name) {
    for (int row = 1; row < grid.getRowCount(); row++) {
      if (String.valueOf(grid.getDataValueByPosition(0, row)).startsWith(name)) {
        grid.doCommand(new SelectCellCommand(grid, 1, row, false, false));
        Window.pump();
        return;
      }
    }
    throw new AssertionError("no row " + name);
  }

  @Test
  void anEmptySeriesBecomesAFrozenPlanWithRunSheets() throws Exception {
    Path at = folder.resolve("study");
    StudySession.create(at, "Brackenfold").close();
    OpenStudy study = Window.open(at);
    Series series = SeriesSetup.series(study.session(), "Spring", "what moves the bloom", Question.WHICH_MATTER);
    SeriesSetup.factor(study.session(), series, "air_flow", "400 to 500", false, false);
    SeriesSetup.factor(study.session(), series, "furnace_height", "600 to 900", true, false);
    Window.sheet(series).show("page.plan");
    Window.waitForResults(study);
    NatTable grid = Window.find("plan", NatTable.class);
    select(grid, "Air flow");
    Window.type(grid, "400 to 800 L/min");
    assertEquals("400 to 800 L/min", series.getFactors().get(0).getLevels());
    Window.waitForResults(study);
    press("plan.propose");
    Button freeze = Window.find("plan.freeze", Button.class);
    Window.waitFor("a proposal", freeze::isEnabled);
    takeAnother(freeze);
    press("plan.propose");
    Window.waitFor("the recommended again", freeze::isEnabled);
    press("plan.freeze");
    Window.waitFor("the frozen plan", () -> !series.getTrials().isEmpty());
    assertEquals(8, series.getTrials().size());
    assertEquals(8, series.getPlans().get(0).getRuns().size());
    assertTrue(series.getSeed() != null && series.getPlans().get(0).getFrozenAt().contains("T"));
    Path sheets = folder.resolve("sheets.pdf");
    RunSheetFile.write(study, series, sheets);
    Window.waitFor("the run sheets", () -> sheets.toFile().length() > 10_000);
    assertTrue(new String(Files.readAllBytes(sheets), StandardCharsets.ISO_8859_1).startsWith("%PDF"));
    Window.waitForResults(study);
    press("plan.withdraw");
    assertTrue(series.getTrials().isEmpty() && study.session().study().getBuilds().isEmpty());
  }

  /** Marks a design beside the recommended one and takes it. */
  private static void takeAnother(Button freeze) {
    NatTable designs = Window.find("plan.proposal", NatTable.class);
    String recommended = String.valueOf(designs.getDataValueByPosition(0, 1));
    designs.doCommand(new SelectCellCommand(designs, 0, 1, false, false));
    designs.doCommand(new MoveSelectionCommand(SelectionLayer.MoveDirectionEnum.DOWN, false, false));
    Window.pump();
    press("plan.take");
    Label message = Window.find("plan-message", Label.class);
    Window.waitFor("the design taken", () -> message.getText().matches("(?s).+: \\d+ (trials in|Versuche in) .*"));
    assertFalse(message.getText().startsWith(recommended + ": "), message.getText());
    assertTrue(freeze.isEnabled());
  }

  @Test
  void whatIsWrongWithAFactorIsSaidBelow() throws Exception {
    OpenStudy study = Window.demonstration();
    Series series = study.session().study().getSeries().get(0);
    SeriesSetup.factor(study.session(), series, "air_flow", "800 to 500", false, false);
    Window.sheet(series).show("page.plan");
    Window.waitForResults(study);
    Label message = Window.find("plan-message", Label.class);
    Window.waitFor("the complaint", () -> message.getText().contains("not below the upper limit"));
    press("plan.propose");
    Window.waitFor("the refusal", () -> message.getText().contains("800"));
    assertFalse(Window.find("plan.freeze", Button.class).isEnabled());
  }

  @Test
  void burntTrialsYieldEffectsAndASuggestion() throws Exception {
    OpenStudy study = Window.demonstration();
    Series series = study.session().study().getSeries().get(0);
    Window.sheet(series).show("page.effects");
    Window.waitForResults(study);
    Combo outcome = Window.find("effects.outcome", Combo.class);
    Window.waitFor("outcomes", () -> outcome.indexOf("bloom mass") >= 0);
    outcome.select(outcome.indexOf("bloom mass"));
    outcome.notifyListeners(SWT.Selection, new Event());
    Label said = Window.find("effects-said", Label.class);
    Window.waitFor("effects", () -> said.getText().contains("bloom mass") && said.getText().contains("trials in"));
    Window.waitFor("plots", () -> Window.find("effects.plot", Combo.class).getItemCount() > 2);
    press("effects.next");
    Window.waitFor("a suggestion", () -> said.getText().contains("How sure") || said.getText().contains("Wie sicher"));
  }
}
