package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.ui.Parts;
import daubline.ui.hearth.HearthsideEditor;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Seeds;
import daubline.ui.study.Start;
import daubline.ui.study.Studies;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Link;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The start page opens the demonstration study as a copy in the person's own folder. */
class StartPageTest {

  @AfterEach
  void clear() {
    Window.clear();
  }

  @Test
  void theDemonstrationOpensAsACopy() {
    Start.hearthside();
    Window.pump();
    assertTrue(Window.page().getActiveEditor() instanceof HearthsideEditor);
    Window.find("seed-" + Seeds.DEMONSTRATION, Link.class).notifyListeners(SWT.Selection, new Event());
    Window.waitFor("the demonstration study", () -> Studies.get().current().isPresent());
    OpenStudy study = Studies.get().current().orElseThrow();
    assertEquals(Seeds.home().resolve(Seeds.DEMONSTRATION).toAbsolutePath().normalize(), study.folder());
    assertFalse(study.session().isReadOnly(), "the copy can be worked on");
    assertFalse(study.session().isDirty(), "opening changes nothing");
    assertTrue(Window.page().findView(Parts.STUDY) != null);
  }

  @Test
  void eachSheetOfTheDemonstrationOpens() throws Exception {
    OpenStudy study = Window.demonstration();
    study.session().study().eAllContents().forEachRemaining(o -> {
      if (o instanceof daubline.model.EvidenceSheet || o instanceof daubline.model.Trial || o instanceof daubline.model.Reconstruction) {
        assertEquals(o, Window.sheet(o).object());
      }
    });
    assertFalse(study.session().isDirty(), "looking changes nothing");
  }
}
