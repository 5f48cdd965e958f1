package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.model.Charge;
import daubline.model.EvidenceSheet;
import daubline.model.Trial;
import daubline.ui.edit.Edits;
import daubline.ui.grid.Grid;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.study.OpenStudy;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Blocks of cells go out of grids and come in again by keys, also from a spreadsheet in another language; each paste is one change. */
class PasteTest {

  @AfterEach
  void clear() {
    Window.clear();
  }

  private static Grid grid(NatTable table) {
    return (Grid) table.getData(Grid.GRID);
  }

  private static NatTable log(Trial trial) {
    SheetEditor editor = Window.sheet(trial);
    editor.show("record.log");
    Window.pump();
    NatTable table = Window.find("log", NatTable.class);
    table.forceFocus();
    Keys.rest(200);
    return table;
  }

  @Test
  void aBlockWithDecimalCommasBecomesRowsOfTheLogAndIsOneChange() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial trial = Window.firstTrial(study);
    String before = study.session().digest();
    int rows = trial.getLog().size();
    NatTable table = log(trial);
    grid(table).select(0, rows);
    Edits.copy("16:35\tcharge\t1,25 kg\t2,05 kg\r\n16:40\tcharge\t0,75 kg\t1,5 kg\r\n16:50\tnote\t\t\r\n");
    Keys.plainly(() -> Keys.chord(SWT.CTRL, 'v'));
    assertEquals(rows + 3, trial.getLog().size());
    Charge charge = (Charge) trial.getLog().get(rows);
    assertEquals(1.25, charge.getItems().get(0).getValue(), 1e-9);
    assertEquals(1.5, ((Charge) trial.getLog().get(rows + 1)).getItems().get(1).getValue(), 1e-9);
    assertTrue(study.session().undoLabel().orElse("").contains("Paste"), study.session().undoLabel().orElse(""));
    study.session().undo();
    assertEquals(before, study.session().digest());
    study.session().redo();
    assertEquals(rows + 3, trial.getLog().size());
  }

  @Test
  void whatIsNotUnderstoodStaysInItsOwnRowToBeMended() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial trial = Window.firstTrial(study);
    int rows = trial.getLog().size();
    NatTable table = log(trial);
    grid(table).select(0, rows);
    Edits.copy("25:99\tnote\n16:50\tnote");
    Keys.plainly(() -> Keys.chord(SWT.CTRL, 'v'));
    assertEquals(rows + 2, trial.getLog().size());
    assertEquals("25:99", grid(table).model().cell(0, rows).text());
    assertTrue(grid(table).model().cell(0, rows).tip().contains("25:99"), grid(table).model().cell(0, rows).tip());
    assertTrue(grid(table).model().cell(0, rows + 1).text().endsWith("16:50"), grid(table).model().cell(0, rows + 1).text());
  }

  @Test
  void valuesCopiedWithTheirHeadingsFindTheirPlacesInAnotherSheet() throws Exception {
    OpenStudy study = Window.demonstration();
    EvidenceSheet from = study.session().study().getSites().get(0).getContexts().get(0).getSheets().get(0);
    EvidenceSheet to = study.session().study().getSites().get(1).getContexts().get(0).getSheets().get(0);
    String before = study.session().digest();
    SheetEditor editor = Window.sheet(to);
    editor.show("page.values");
    NatTable table = Window.find("values", NatTable.class);
    table.forceFocus();
    Keys.rest(200);
    int row = row(grid(table), "Base internal diameter");
    grid(table).select(1, row + 20);
    Edits.copy("Property\tValue\nBase internal diameter\t310 mm\nNo such property\t5 mm\n");
    Keys.plainly(() -> Keys.chord(SWT.CTRL, 'v'));
    assertTrue(grid(table).model().cell(1, row(grid(table), "Base internal diameter")).text().startsWith("310"));
    study.session().undo();
    assertEquals(before, study.session().digest());
    assertFalse(from == to);
  }

  private static int row(Grid grid, String name) {
    for (int row = 0; row < grid.model().rows(); row++) {
      if (grid.model().cell(0, row).text().equals(name)) {
        return row;
      }
    }
    throw new AssertionError("no row " + name);
  }

  @Test
  void whatIsCopiedHasItsHeadingsWithUnitsAndDeleteEmptiesAllThatIsSelectedAsOneChange() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial trial = Window.firstTrial(study);
    String before = study.session().digest();
    NatTable table = log(trial);
    grid(table).select(2, 1);
    Keys.plainly(() -> {
      Keys.together(SWT.SHIFT, SWT.ARROW_DOWN, (char) 0);
      Keys.together(SWT.SHIFT, SWT.ARROW_RIGHT, (char) 0);
    });
    Keys.plainly(() -> Keys.chord(SWT.CTRL, 'c'));
    String[] lines = Edits.pasted().split("\n");
    assertTrue(lines.length >= 3, Edits.pasted());
    assertEquals(2, lines[0].split("\t", -1).length, lines[0]);
    assertTrue(lines[0].contains("kg"), lines[0]);
    Keys.plainly(() -> Keys.press(SWT.DEL, SWT.DEL));
    assertFalse(before.equals(study.session().digest()), "something was emptied");
    study.session().undo();
    assertEquals(before, study.session().digest());
  }
}
