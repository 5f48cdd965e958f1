package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.model.LogEntry;
import daubline.model.Trial;
import daubline.record.EventKind;
import daubline.ui.grid.Grid;
import daubline.ui.study.OpenStudy;
import java.util.List;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** From an empty study to the log of a burnt trial, by keys and mouse alone: the work of the perspective Run Day. */
class RunDayByHandTest {

  private static final int EXTRACTION_STEPS = 8;

  @AfterEach
  void clear() throws Exception {
    Window.clear();
    Hands.forget("run-day-by-hand");
  }

  @Test
  void aTrialIsLitChargedTappedCorrectedAndEnded() throws Exception {
    Person.acts(() -> {
      OpenStudy study = Hands.begin("Run Day by Hand");
      byte[] empty = Hands.file(study);
      Hands.menu("Trial", "New Trial");
      Trial trial = Hands.model(study).getSeries().get(0).getTrials().get(0);
      Hands.perspective("Run Day");
      Canvas clock = Hands.seen("run.keys", Canvas.class);
      Mouse.click(() -> clock);
      day(trial);
      correction(trial);
      ending(trial);
      recorded(trial);
      Hands.undoneAndDoneAgain(study, empty);
    });
  }

  /** A key and what is typed after it, field by field; what is offered in a field stays where nothing is typed. */
  private static void entry(Trial trial, char key, String... texts) {
    int before = trial.getLog().size();
    Keys.text(String.valueOf(key));
    for (int i = 0; i < texts.length; i++) {
      Person.await("a field of " + key, () -> Display.getCurrent().getFocusControl() instanceof Text);
      if (i > 0) {
        Keys.tap(SWT.TAB);
      }
      Keys.text(texts[i]);
    }
    if (texts.length > 0) {
      Keys.tap(SWT.CR);
    }
    Person.await("the entry of " + key, () -> trial.getLog().size() == before + 1 && !(Display.getCurrent().getFocusControl() instanceof Text));
  }

  private static void day(Trial trial) {
    entry(trial, 'h', "");
    entry(trial, 't', "1100/800/310");
    entry(trial, 'c', "1.2 kg", "2 kg", "first bucket");
    entry(trial, 'c', "");
    entry(trial, 'c', "1400 g", "2 kg");
    entry(trial, 'f', "2 kg");
    entry(trial, 'b', "650 L/min");
    entry(trial, 'v', "35 cm");
    entry(trial, 's', "", "a thumb long, then stiff");
    entry(trial, 'i', "inlet blocked by slag", "4", "temperature fell");
    entry(trial, 'n', "„Wind aus Süd“ – said Änne");
    List<String> kinds = trial.getLog().stream().map(LogEntry::getKind).toList();
    assertEquals(List.of("phase", "temperature", "charge", "charge", "charge", "charge", "blast", "level", "tap", "incident", "note"), kinds);
    assertEquals("lit", trial.getLog().get(0).getText());
    assertEquals("„Wind aus Süd“ – said Änne", trial.getLog().get(10).getText());
    // 1.2 + 1.2 + 1.4 kg of ore on 4 × 2 kg of charcoal
    totals("3.8", "8", 3.8 / 8);
  }

  private static void totals(String ore, String fuel, double ratio) {
    Label totals = Hands.seen("runTotals", Label.class);
    Person.await("the totals", () -> totals.getText().contains("Ore to fuel"));
    Person.sees("the totals", () -> totals.getText().contains("Ore: " + ore) && totals.getText().contains("Fuel: " + fuel));
    String said = Person.see(() -> totals.getText().replaceFirst("(?s).*Ore to fuel: ([0-9.]+).*", "$1"));
    assertEquals(ratio, Double.parseDouble(said), 0.006);
  }

  /** The third charge was 1.6 kg; what stood there is kept. */
  private static void correction(Trial trial) {
    NatTable log = Hands.grid("runLog");
    Hands.cellAt(log, 4, "Ore (kg)");
    Keys.cells(log, "1600 g");
    assertTrue(trial.getLog().get(4).getOriginal().contains("1400 g"), trial.getLog().get(4).getOriginal());
    totals("4", "8", 4.0 / 8);
  }

  private static void ending(Trial trial) {
    Canvas clock = Hands.seen("run.keys", Canvas.class);
    Mouse.click(() -> clock);
    entry(trial, 'h', "blast off");
    for (int i = 0; i < EXTRACTION_STEPS; i++) {
      entry(trial, 'x');
    }
    Label totals = Hands.seen("runTotals", Label.class);
    Person.await("the end of the extraction", () -> totals.getText().contains("every step is stamped"));
  }

  /** What the day wrote stands in the record of the trial. */
  private static void recorded(Trial trial) {
    Hands.perspective("Record");
    Hands.tab("Trial 1");
    Hands.page("record.log");
    Grid log = Hands.of(Hands.grid("log"));
    Person.await("the log", () -> log.model().rows() > trial.getLog().size());
    Person.sees("the corrected charge", () -> Hands.rowWith(log, "1600 g") == 4);
    assertEquals(EXTRACTION_STEPS, trial.getLog().stream().filter(e -> EventKind.EXTRACTION.word().equals(e.getKind())).count());
  }
}
