package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.DecimalSign;
import daubline.base.Stage;
import daubline.base.Variables;
import daubline.model.ModelFactory;
import daubline.model.Series;
import daubline.model.StagedValue;
import daubline.model.Trial;
import daubline.session.Readings;
import daubline.ui.look.Passage;
import daubline.ui.study.OpenStudy;
import daubline.ui.views.FigureCanvas;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The page “Before the fire” in the real window. */
class BeforeFireTest {

  @AfterEach
  void clear() {
    Window.clear();
  }

  private static void openPage(Trial trial) {
    Window.sheet(trial).show("page.before");
    Window.pump();
  }

  private static String text(String id) {
    return Window.find(id, Passage.class).getText();
  }

  private static void waitUntilSettled() {
    Window.waitFor("the forecast", () -> text("before-status").contains("300"));
  }

  private static int figureHeight(String id) {
    return Window.find(id, FigureCanvas.class).getSize().y;
  }

  private static String findings() {
    StringBuilder all = new StringBuilder();
    Window.all(Window.find("before-fire", Composite.class)).stream().filter(c -> "before-finding".equals(c.getData("id")))
        .forEach(c -> all.append(((Passage) c).getText()).append('\n'));
    return all.toString();
  }

  @Test
  void saysWhichTrialOfTheSeriesChokesFirstAndWhy() throws Exception {
    OpenStudy study = Window.demonstration();
    openPage(Window.firstTrial(study));
    waitUntilSettled();
    String race = text("before-race");
    assertTrue(race.contains("Aldervale 5") && race.contains("Aldervale 2"), race);
    assertTrue(race.contains(" L ") && race.contains("cm"), race);
    NatTable figures = Window.find("before-figures", NatTable.class);
    assertTrue(figures.getRowCount() > 20);
    assertTrue(findings().contains("○"), findings());
    // the residuals of the series and those of the whole study are drawn; ore of one size has no line of classes
    Window.waitFor("the residuals", () -> figureHeight("before-residuals") > 100 && figureHeight("before-study") > 100);
  }

  @Test
  void reckonsAnewWhenAValueChangesAndSaysWhatCannotBe() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial trial = Window.firstTrial(study);
    openPage(trial);
    waitUntilSettled();
    assertFalse(findings().contains("△ air blown"), findings());
    StagedValue air = trial.getValues().stream().filter(v -> v.getStage() == Stage.PLANNED && "air_flow".equals(v.getVariable())).findFirst().orElseThrow();
    study.edit("change.value", "air", () -> assertTrue(Readings.put(air, Variables.standard().get("air_flow"), "60", "L/min", DecimalSign.POINT).isEmpty()));
    Window.waitFor("the warning of little air", () -> findings().contains("L/min of air per cm²"));
    study.edit("change.value", "air", () -> assertTrue(Readings.put(air, Variables.standard().get("air_flow"), "0", "L/min", DecimalSign.POINT).isEmpty()));
    Window.waitFor("the refusal", () -> findings().contains("cannot be"));
    study.session().undo();
    study.session().undo();
    waitUntilSettled();
  }

  @Test
  void takesTheBurnRateFromTheChargeLogWhenAsked() throws Exception {
    openPage(Window.firstTrial(Window.demonstration()));
    waitUntilSettled();
    assertTrue(findings().contains("burn rate is a guess"), findings());
    Button log = Window.find("before-log", Button.class);
    log.setSelection(true);
    log.notifyListeners(SWT.Selection, new Event());
    Window.waitFor("the forecast with the log", () -> text("before-status").contains("300") && !findings().contains("burn rate is a guess"));
  }

  @Test
  void anEmptyTrialSaysWhatIsMissing() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial empty = ModelFactory.eINSTANCE.createTrial();
    study.edit("change.value", "trial", () -> {
      empty.setName("Nothing planned");
      Series series = study.session().study().getSeries().get(0);
      series.getTrials().add(empty);
    });
    openPage(empty);
    Window.waitFor("what is missing", () -> findings().contains("is not known"));
    assertEquals(0, Window.find("before-figures", NatTable.class).getRowCount() - 1);
  }
}
