package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.model.Hazard;
import daubline.model.ModelFactory;
import daubline.ui.grid.Grid;
import daubline.ui.grid.GridModel;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.study.OpenStudy;
import java.util.stream.IntStream;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The order of dates and the decimal sign change what is shown; the study stays as it was, byte for byte. */
class ShownOnlyTest {

  private static final IEclipsePreferences PREFERENCES = InstanceScope.INSTANCE.getNode("daubline.ui");

  @AfterEach
  void clear() {
    PREFERENCES.remove("dates");
    PREFERENCES.remove("decimal");
    Window.clear();
  }

  private static GridModel grid(String id) {
    return ((Grid) Window.find(id, NatTable.class).getData(Grid.GRID)).model();
  }

  private static int column(GridModel model, String shown) {
    return IntStream.range(0, model.columns()).filter(c -> model.cell(c, 0).text().equals(shown)).findFirst()
        .orElseThrow(() -> new AssertionError("no cell " + shown));
  }

  @Test
  void datesAreShownAndTypedInTheChosenOrderAndKeptAsTheyAre() throws Exception {
    OpenStudy study = Window.demonstration();
    Hazard hazard = ModelFactory.eINSTANCE.createHazard();
    hazard.setName("Sparks");
    hazard.setReviewOn("2031-08-06");
    study.edit("change.field", "hazard", () -> study.session().study().getHazards().add(0, hazard));
    SheetEditor editor = Window.sheet(study.session().study());
    editor.show("record.hazards");
    String before = study.session().digest();
    assertTrue(column(grid("hazards"), "2031-08-06") > 0);
    PREFERENCES.put("dates", "DMY");
    PREFERENCES.put("decimal", "COMMA");
    GridModel model = grid("hazards");
    int column = column(model, "06.08.2031");
    assertEquals(before, study.session().digest(), "only shown");
    model.put(column, 0, "07.08.2031");
    assertEquals("2031-08-07", hazard.getReviewOn(), "typed as shown, kept as always");
    model.put(column, 0, "2031-08-08");
    assertEquals("2031-08-08", hazard.getReviewOn(), "understood always");
    model.put(column, 0, "32.08.2031");
    assertEquals("32.08.2031", model.cell(column, 0).text(), "no day of a calendar: it stays to be mended");
    assertEquals("2031-08-08", hazard.getReviewOn());
    PREFERENCES.put("dates", "MDY");
    model.put(column, 0, "08/06/2031");
    assertEquals("08/06/2031", model.cell(column, 0).text());
    assertEquals("2031-08-06", hazard.getReviewOn());
    Window.waitForResults(study);
  }
}
