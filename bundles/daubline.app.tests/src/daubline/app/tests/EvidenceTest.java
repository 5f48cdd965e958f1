package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.model.Claim;
import daubline.model.EvidenceSheet;
import daubline.ui.Words;
import daubline.ui.study.OpenStudy;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Evidence is read, reckoned and chosen in the window; undo brings back the same bytes. */
class EvidenceTest {

  @AfterEach
  void clear() {
    Window.clear();
  }

  static EvidenceSheet firstSheet(OpenStudy study) {
    return study.session().study().getSites().stream().flatMap(s -> s.getContexts().stream()).flatMap(c -> c.getSheets().stream()).findFirst().orElseThrow();
  }

  /** Fills texts of a dialog as soon as it is open; the dialog itself runs its own loop. */
  private static void fill(String title, String... idsAndTexts) {
    Display.getCurrent().timerExec(50, () -> {
      for (Shell shell : Display.getCurrent().getShells()) {
        for (int i = 0; shell.getText().equals(title) && i < idsAndTexts.length; i += 2) {
          String id = idsAndTexts[i];
          Text text = Window.all(shell).stream().filter(c -> id.equals(c.getData("id"))).map(Text.class::cast).findFirst().orElseThrow();
          text.setText(idsAndTexts[i + 1]);
        }
      }
    });
  }

  static void press(String id) {
    Window.find(id, Button.class).notifyListeners(SWT.Selection, new Event());
    Window.pump();
  }

  @Test
  void aDiameterFromAnArcBecomesAClaimThatKeepsWhatWasTyped() throws Exception {
    OpenStudy study = Window.demonstration();
    EvidenceSheet sheet = firstSheet(study);
    Window.sheet(sheet).show("page.values");
    String before = study.session().digest();
    int claims = sheet.getClaims().size();
    fill(Words.of("arc.title"), "arcFirst", "400 ± 2 mm", "arcSecond", "150 ± 2 mm");
    Window.answer(Words.of("arc.title"), Words.of("arc.enter"));
    press("fromArc");
    assertEquals(claims + 1, sheet.getClaims().size());
    Claim claim = sheet.getClaims().get(claims);
    assertEquals(0.41667, claim.getValue(), 1e-5);
    assertEquals("150 ± 2", claim.getInputs().get(1).getTyped());
    assertTrue(study.session().undoLabel().orElseThrow().contains("Base internal diameter"));
    study.session().undo();
    assertEquals(before, study.session().digest());
  }
}
