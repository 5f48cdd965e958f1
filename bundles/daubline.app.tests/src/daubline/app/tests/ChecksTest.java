package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.session.StudySession;
import daubline.ui.Parts;
import daubline.ui.Words;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Studies;
import daubline.ui.views.ChecksView;
import java.nio.file.Path;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Checks are listed, follow each change, and lead to the place. */
class ChecksTest {

  @AfterEach
  void clear() {
    Window.clear();
  }

  @Test
  void aFindingLeadsToItsSheet() throws Exception {
    OpenStudy study = Window.demonstration();
    Window.waitForResults(study);
    ChecksView checks = Window.view(Parts.CHECKS, ChecksView.class);
    assertEquals(study.findings().size(), checks.grid().model().rows());
    assertTrue(checks.grid().model().rows() > 0, "the demonstration has totals off 100");
    checks.grid().select(0, 0);
    Window.key(checks.grid().control(), SWT.CR, SWT.CR);
    assertTrue(Window.page().getActiveEditor() instanceof SheetEditor, "Enter opened the sheet");
  }

  @Test
  void aStudyOfWhichNothingIsToBeSaidIsToldFromNone(@TempDir Path folder) throws Exception {
    ChecksView checks = Window.view(Parts.CHECKS, ChecksView.class);
    Path at = folder.resolve("study");
    StudySession.create(at, "Brackenfold").close();
    OpenStudy study = Window.open(at);
    Window.waitForResults(study);
    Window.waitFor("the counts", () -> says(checks, Words.of("checks.count", 0L, 0L, 0L)));
    Studies.get().close(study);
    Window.waitFor("that none is open", () -> says(checks, Words.of("none.open")));
  }

  private static boolean says(ChecksView view, String text) {
    return Window.all(view.grid().control().getShell()).stream().anyMatch(c -> c instanceof Label label && label.isVisible() && label.getText().equals(text));
  }

  @Test
  void aSlipOfUnitIsFoundAfterAMomentAndLeadsToTheField() throws Exception {
    OpenStudy study = Window.demonstration();
    SheetEditor editor = Window.sheet(Window.firstTrial(study));
    editor.reveal(null, "furnace_height");
    Window.type(Window.find("values", org.eclipse.nebula.widgets.nattable.NatTable.class), "90 m");
    Window.waitForResults(study);
    assertTrue(study.findings().stream().anyMatch(f -> f.variable().equals("furnace_height") && f.what().contains("90")), study.findings().toString());
  }

  @Test
  void aSlipOfUnitIsMendedAtOnceAndTakenBackByUndo() throws Exception {
    OpenStudy study = Window.demonstration();
    SheetEditor editor = Window.sheet(Window.firstTrial(study));
    editor.reveal(null, "furnace_height");
    Window.type(Window.find("values", org.eclipse.nebula.widgets.nattable.NatTable.class), "90 m");
    Window.waitForResults(study);
    String before = study.session().digest();
    ChecksView checks = Window.view(Parts.CHECKS, ChecksView.class);
    Window.waitFor("the finding", () -> checks.grid().model().rows() == study.findings().size());
    int row = (int) study.findings().stream().takeWhile(f -> !f.variable().equals("furnace_height")).count();
    checks.grid().select(0, row);
    checks.grid().control().forceFocus();
    ArrangeTest.menu(checks.grid().control(), Words.of("mend.unit", "90", "cm"));
    assertNotEquals(before, study.session().digest());
    Window.waitForResults(study);
    assertTrue(study.findings().stream().noneMatch(f -> f.variable().equals("furnace_height")), study.findings().toString());
    study.session().undo();
    assertEquals(before, study.session().digest());
  }
}
