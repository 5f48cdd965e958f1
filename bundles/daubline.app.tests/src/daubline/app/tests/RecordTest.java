package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.ValueKind;
import daubline.model.Charge;
import daubline.model.LoggerFile;
import daubline.model.Trial;
import daubline.record.RecordWords;
import daubline.ui.Words;
import daubline.ui.record.LoggersPage;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.study.OpenStudy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A trial is recorded from paper by keyboard alone, Enter going on from cell to cell; undo brings back the same bytes. */
class RecordTest {

  @AfterEach
  void clear() {
    Window.clear();
  }

  private static NatTable page(Trial trial, String key) {
    SheetEditor editor = Window.sheet(trial);
    assertTrue(editor.show("record." + key) != null, key);
    Window.pump();
    return Window.find(key, NatTable.class);
  }

  /** Types texts one after the other, each ended by Enter; an empty one is Enter alone. */
  private static void enter(NatTable grid, String... texts) {
    for (String text : texts) {
      if (text.isEmpty()) {
        Window.key(grid, SWT.CR, SWT.CR);
      } else {
        Window.enter(grid, text);
      }
    }
  }

  @Test
  void aRunLogIsTypedFromPaperWithoutTouchingTheMouse() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial trial = Window.firstTrial(study);
    String before = study.session().digest();
    int rows = trial.getLog().size();
    NatTable grid = page(trial, "log");
    enter(grid, "1635", "c", "1200 g", "2050 g", "late bucket", "Ann Reader");
    enter(grid, "1640", "temp", "1170/930/open", "", "");
    enter(grid, "?", "note", "first line cannot be read", "");
    assertEquals(rows + 3, trial.getLog().size());
    Charge charge = assertInstanceOf(Charge.class, trial.getLog().get(rows));
    assertEquals(2, charge.getItems().size());
    assertEquals("late bucket", charge.getText());
    assertEquals("Ann Reader", charge.getBy().getName());
    assertEquals(3, trial.getLog().get(rows + 1).getValues().size());
    assertEquals("time", trial.getLog().get(rows + 2).getIllegible());
    while (!study.session().digest().equals(before) && study.session().undoLabel().isPresent()) {
      study.session().undo();
    }
    assertEquals(before, study.session().digest());
  }

  @Test
  void whatIsNotUnderstoodStaysInItsCellAndSaysWhy() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial trial = Window.firstTrial(study);
    String before = study.session().digest();
    NatTable grid = page(trial, "log");
    enter(grid, "25:99");
    assertEquals(before, study.session().digest());
    Window.key(grid, '\0', SWT.ARROW_LEFT);
    String message = Window.find("log.message", Label.class).getText();
    assertTrue(message.contains("25:99"), message);
  }

  @Test
  void aBeginningOfSeveralKindsIsAskedAboutWhereItStands() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial trial = Window.firstTrial(study);
    int rows = trial.getLog().size();
    NatTable grid = page(trial, "log");
    enter(grid, "1650", "ph");
    String message = Window.find("log.message", Label.class).getText();
    assertTrue(message.contains("phase") && message.contains("photograph"), message);
    enter(grid, "pho", "ruin from the east");
    assertEquals("photograph", trial.getLog().get(rows).getKind());
    enter(grid, "", "1655", "te", "1170");
    assertEquals("temperature", trial.getLog().get(rows + 1).getKind());
    while (study.session().undoLabel().isPresent() && trial.getLog().size() > rows) {
      study.session().undo();
    }
  }

  @Test
  void residuesAreLaidOutWeighedOrSaidNotToBe() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial trial = Window.firstTrial(study);
    NatTable grid = page(trial, "residues");
    int rows = trial.getRemains().getResidues().size();
    enter(grid, "Blue glass", "not weighed", "14");
    assertEquals(ValueKind.NOT_WEIGHED, trial.getRemains().getResidues().get(rows).getKind());
    assertEquals(14, trial.getRemains().getResidues().get(rows).getCount());
    Window.find("record.layOut", Button.class).notifyListeners(SWT.Selection, new Event());
    Window.pump();
    assertTrue(trial.getRemains().getResidues().size() >= daubline.base.ResidueKinds.standard().size());
    assertEquals(new RecordWords(Locale.getDefault()).of("change.layOut"), study.session().undoLabel().orElseThrow());
  }

  @Test
  void analysesAreShownMeasuredAndNormalised() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial trial = Window.firstTrial(study);
    NatTable grid = page(trial, "analyses");
    int with = grid.getRowCount();
    Window.find("record.normalised", Button.class).setSelection(false);
    Window.find("record.normalised", Button.class).notifyListeners(SWT.Selection, new Event());
    Window.pump();
    Combo iron = Window.find("record.iron", Combo.class);
    String printed = study.session().digest();
    iron.select(2);
    iron.notifyListeners(SWT.Selection, new Event());
    Window.pump();
    assertTrue(with > 1);
    assertEquals(printed, study.session().digest(), "looking changes nothing");
  }

  @Test
  void aLoggerFileIsPreviewedTakenOverAndAligned() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial trial = Window.firstTrial(study);
    String day = trial.getOn();
    Path file = Files.createTempFile("box", ".csv");
    StringBuilder text = new StringBuilder("Time;temperature mid shaft (°C);temperature top (°C)\n");
    for (int i = 0; i < 120; i++) {
      text.append(String.format(Locale.ROOT, "%s 10:%02d:%02d;%d,5;%s%n", day, i / 60, i % 60, 600 + i, i == 60 ? "open" : "200"));
    }
    Files.writeString(file, text);
    SheetEditor editor = Window.sheet(trial);
    LoggersPage page = (LoggersPage) editor.show("record.loggers");
    String before = study.session().digest();
    Window.answer(Words.of("logger.title"), Words.of("logger.do"));
    page.take(file);
    Window.pump();
    assertEquals(1, trial.getLoggers().size());
    LoggerFile logger = trial.getLoggers().get(0);
    assertEquals(",", logger.getDecimal());
    assertTrue(Files.exists(study.folder().resolve(logger.getPath())));
    Window.waitFor("the traces", () -> Window.find("loggersMessage", Label.class).getText().startsWith(Words.of("loggers.own")));
    Control canvas = Window.find("loggers", org.eclipse.swt.widgets.Canvas.class);
    shift(canvas, SWT.ARROW_RIGHT);
    Combo entry = Window.find("loggers.entry", Combo.class);
    entry.select(0);
    entry.notifyListeners(SWT.Selection, new Event());
    Window.find("loggers.mark", Button.class).notifyListeners(SWT.Selection, new Event());
    Window.pump();
    assertTrue(logger.getOffset() != null && logger.getSyncMark() != null);
    Window.find("loggers.release", Button.class).notifyListeners(SWT.Selection, new Event());
    Window.pump();
    assertEquals(null, logger.getOffset());
    study.session().undo();
    study.session().undo();
    study.session().undo();
    assertEquals(before, study.session().digest());
    Files.delete(file);
  }

  private static void shift(Control control, int key) {
    Event event = new Event();
    event.keyCode = key;
    event.stateMask = SWT.SHIFT;
    event.type = SWT.KeyDown;
    control.notifyListeners(SWT.KeyDown, event);
    Window.pump();
  }
}
