package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.model.Trial;
import daubline.session.BlindRecordings;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Studies;
import daubline.ui.views.ChecksView;
import daubline.ui.views.StudyPart;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** While somebody records blind the window shows neither run nor evidence, whatever is opened; ended it shows them again. */
class BlindTest {

  private static final List<String> HIDING = List.of("comparison", "ranks", "weights", "beside", "tables", "runday", "reconstructions", "figures", "reasons", "whereFrom");

  @AfterEach
  void clear() {
    Window.clear();
  }

  private static void begin() throws Exception {
    Display.getCurrent().timerExec(300, () -> Arrays.stream(Display.getCurrent().getShells()).flatMap(s -> Window.all(s).stream())
        .filter(c -> "blind.who".equals(c.getData("id"))).map(Combo.class::cast).findFirst().orElseThrow().setText("Ann"));
    Window.answer("Record Blind", "Begin");
    command();
  }

  private static void command() throws Exception {
    PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand("daubline.ui.recordBlind", null);
    Window.pump();
  }

  /** Everything that can be read in the window without opening more. */
  private static String read() {
    StringBuilder all = new StringBuilder();
    for (Control c : Window.all(Window.shell())) {
      if (c.isVisible()) {
        all.append(c instanceof Label l ? l.getText() : c instanceof Text t ? t.getText() : "").append('\n');
      }
    }
    return all.toString();
  }

  private static boolean covered(Composite part) {
    return Window.all(part).stream().anyMatch(c -> "veil".equals(c.getData("id")) && c.isVisible() && !((Label) c).getText().isEmpty());
  }

  @Test
  void nothingOfRunAndEvidenceIsShownUntilItIsEnded() throws Exception {
    OpenStudy study = Window.demonstration();
    Window.waitForResults(study);
    Trial trial = Window.firstTrial(study);
    SheetEditor editor = Window.sheet(trial);
    SheetEditor evidence = Window.sheet(study.session().study().getSites().get(0).getContexts().get(0).getSheets().get(0));
    String name = trial.getName();
    int findings = study.findings().size();
    begin();
    assertEquals("Ann", study.blind().orElseThrow().getBy().getName());
    assertFalse(study.session().isDirty(), "saved at once");
    for (String perspective : List.of("evidence", "plan", "runday", "record", "compare", "publish")) {
      PlatformUI.getWorkbench().showPerspective("daubline.app." + perspective, Window.page().getWorkbenchWindow());
      Window.pump();
      assertFalse(read().contains(name), perspective + ": " + read());
    }
    assertHidden();
    ChecksView checks = Window.view("daubline.ui.checks", ChecksView.class);
    assertEquals(study.findings().size(), checks.grid().model().rows());
    assertEquals(findings, study.findings().size() + study.hiddenFindings());
    String code = BlindRecordings.codes(study.session().study()).get(trial.getId());
    assertEquals(code, editor.getPartName());
    assertFalse(editor.getTitleToolTip().contains(name));
    for (String key : List.of("page.before", "page.balance", "page.facts", "record.predictions", "record.log", "record.loggers")) {
      assertNull(editor.show(key), key);
    }
    assertNull(evidence.show("page.values"));
    assertNotNull(editor.show("record.residues"));
    assertNotNull(editor.show("record.zones"));
    assertTrue(study.session().undoLabel().isEmpty());
    restartAndEnd(study, name);
  }

  private static void assertHidden() throws Exception {
    for (String view : HIDING) {
      Object part = Window.page().showView("daubline.ui." + view);
      Window.pump();
      Composite area = (Composite) Window.page().getActivePart().getSite().getService(org.eclipse.e4.ui.model.application.ui.basic.MPart.class).getWidget();
      assertTrue(covered(area), view + " " + (part instanceof StudyPart));
    }
  }

  /** Closed and opened again it is still on; then what is written is marked, and ending it shows everything. */
  private static void restartAndEnd(OpenStudy before, String name) throws Exception {
    Path folder = before.folder();
    Window.page().closeAllEditors(false);
    Studies.get().close(before);
    OpenStudy study = Window.open(folder);
    Window.waitForResults(study);
    assertTrue(study.blind().isPresent() && study.results().isEmpty() && study.compared().isEmpty());
    Trial trial = Window.firstTrial(study);
    assertFalse(OpenStudy.nameOf(trial).contains(name));
    study.edit("change.add", "piece", () -> trial.getPieces().add(daubline.model.ModelFactory.eINSTANCE.createPiece()));
    Window.answer("End Blind Recording", "Yes");
    command();
    assertTrue(study.blind().isEmpty());
    assertNotNull(study.session().study().getBlindRecordings().get(0).getEnded());
    assertEquals(1, BlindRecordings.written(study.session().study().getBlindRecordings().get(0)).size());
    assertEquals(name, OpenStudy.nameOf(trial));
    Window.waitForResults(study);
    assertTrue(study.results().isPresent());
    assertNotNull(Window.sheet(trial).show("page.facts"));
    study.session().undo();
    assertTrue(study.blind().isEmpty());
  }
}
