package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.model.Trial;
import daubline.model.Visit;
import daubline.session.Visits;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.study.OpenStudy;
import java.time.LocalDate;
import java.util.List;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Visits to a furnace left to decay are planned, written down and shown as due by typing. */
class VisitsTest {

  @AfterEach
  void clear() {
    Window.clear();
  }

  @Test
  void aVisitIsWrittenDownByTypingAndWhatIsDueStandsBelow() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial trial = Window.firstTrial(study);
    String before = study.session().digest();
    study.edit("change.field", "visits", () -> Visits.plan(trial, LocalDate.of(2020, 1, 31), List.of(1, 6)));
    SheetEditor editor = Window.sheet(trial);
    assertNotNull(editor.show("record.visits"));
    Window.pump();
    NatTable grid = Window.find("visits", NatTable.class);
    Label summary = Window.find("visits.summary", Label.class);
    assertTrue(summary.getText().contains("2020-02-29") && summary.getText().contains("2020-07-31"), summary.getText());
    // the row that is not begun yet is selected
    for (String text : List.of("2020-12-31", "2021-01-05", "Ann", "480 mm")) {
      Window.enter(grid, text);
    }
    Visit visit = trial.getVisits().get(trial.getVisits().size() - 1);
    assertEquals("2020-12-31", visit.getDueOn());
    assertEquals("2021-01-05", visit.getVisitedOn());
    assertEquals("Ann", visit.getRemains().getRecordedBy().getName());
    assertEquals(0.48, visit.getRemains().getClaims().get(0).getValue(), 1e-12);
    study.edit("change.field", "visits", () -> trial.getVisits().stream().filter(v -> "2020-02-29".equals(v.getDueOn())).forEach(v -> v.setNotVisitedBecause("snow")));
    Window.waitFor("the summary", () -> !summary.getText().contains("2020-02-29") && summary.getText().contains("2020-07-31"));
    while (study.session().undoLabel().isPresent() && !study.session().digest().equals(before)) {
      study.session().undo();
    }
    assertEquals(before, study.session().digest());
  }
}
