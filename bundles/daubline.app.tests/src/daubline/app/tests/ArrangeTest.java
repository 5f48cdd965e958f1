package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.ui.Parts;
import daubline.ui.Words;
import daubline.ui.grid.Grid;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.study.OpenStudy;
import daubline.ui.views.ChecksView;
import daubline.ui.views.TablesView;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.resize.command.ColumnResizeCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Columns are left out, rows put in order and searched in, the same way in every grid, and it is remembered. */
class ArrangeTest {

  @AfterEach
  void clear() throws Exception {
    for (String key : InstanceScope.INSTANCE.getNode("daubline.ui").keys()) {
      if (key.startsWith("grid.")) {
        InstanceScope.INSTANCE.getNode("daubline.ui").remove(key);
      }
    }
    Window.clear();
  }

  /** Opens the context menu of a control by its key and presses a line of it, in a menu of the menu when two are named. */
  static void menu(NatTable table, String... lines) {
    Menu[] open = new Menu[1];
    Listener seen = e -> open[0] = e.widget instanceof Menu m && m.getParentMenu() == null ? m : open[0];
    Display.getCurrent().addFilter(SWT.Show, seen);
    Event event = new Event();
    event.detail = SWT.MENU_KEYBOARD;
    Display.getCurrent().timerExec(400, () -> {
      Menu menu = open[0];
      for (int i = 0; i < lines.length; i++) {
        String wanted = lines[i];
        MenuItem item = Arrays.stream(menu.getItems()).filter(m -> m.getText().split("\t")[0].equals(wanted)).findFirst().orElseThrow(() -> new AssertionError(wanted));
        if (i + 1 < lines.length) {
          menu = item.getMenu();
        } else {
          assertTrue(item.isEnabled(), wanted);
          // as the toolkit does: a menu that is still open keeps the keyboard from what its line opens
          open[0].setVisible(false);
          if ((item.getStyle() & SWT.CHECK) != 0) {
            item.setSelection(!item.getSelection());
          }
          item.notifyListeners(SWT.Selection, new Event());
        }
      }
    });
    table.notifyListeners(SWT.MenuDetect, event);
    Keys.rest(900);
    Display.getCurrent().removeFilter(SWT.Show, seen);
  }

  private static List<String> shown(NatTable table, int column) {
    return IntStream.range(1, table.getRowCount()).mapToObj(row -> String.valueOf(table.getDataValueByPosition(column, row))).toList();
  }

  @Test
  void aColumnThatIsLeftOutStaysSoInTheNextSheetUntilAllAreCalledBack() throws Exception {
    OpenStudy study = Window.demonstration();
    SheetEditor editor = Window.sheet(Window.firstTrial(study));
    NatTable table = Window.find("values", NatTable.class);
    Grid grid = (Grid) table.getData(Grid.GRID);
    int all = table.getColumnCount();
    table.forceFocus();
    grid.select(3, 1);
    menu(table, Words.of("menu.grid.out", grid.model().heading(3)));
    assertEquals(all - 1, table.getColumnCount());
    Window.page().closeEditor(editor, false);
    Window.sheet(study.session().study().getSeries().get(0).getTrials().get(1));
    Window.pump();
    NatTable again = Window.find("values", NatTable.class);
    assertEquals(all - 1, again.getColumnCount());
    again.forceFocus();
    ((Grid) again.getData(Grid.GRID)).select(1, 1);
    menu(again, Words.of("menu.grid.columns"), Words.of("menu.grid.all"));
    assertEquals(all, again.getColumnCount());
  }

  @Test
  void rowsStandInTheOrderOfAColumnAndWhatIsSelectedIsStillMeant() throws Exception {
    OpenStudy study = Window.demonstration();
    Window.waitForResults(study);
    ChecksView checks = Window.view(Parts.CHECKS, ChecksView.class);
    NatTable table = checks.grid().control();
    table.forceFocus();
    Window.idle();
    checks.grid().select(2, 0);
    String chosen = checks.grid().model().cell(2, 0).text();
    menu(table, Words.of("menu.grid.down"));
    List<String> all = new java.util.ArrayList<>(IntStream.range(0, checks.grid().model().rows()).mapToObj(r -> checks.grid().model().cell(2, r).text()).toList());
    all.sort(java.text.Collator.getInstance());
    assertFalse(all.isEmpty());
    assertEquals(all.getLast(), shown(table, 2).get(0));
    assertEquals(chosen, checks.grid().model().cell(2, checks.grid().selected().orElseThrow().y).text());
    menu(table, Words.of("menu.grid.up"));
    assertEquals(all.getFirst(), shown(table, 2).get(0));
    menu(table, Words.of("menu.grid.asIs"));
    assertEquals(IntStream.range(0, shown(table, 2).size()).mapToObj(r -> checks.grid().model().cell(2, r).toString()).toList(), shown(table, 2));
  }

  @Test
  void somethingIsFoundByKeysAndOnlyItsRowsAreShownUntilTheBarIsClosed() throws Exception {
    OpenStudy study = Window.demonstration();
    Window.waitForResults(study);
    TablesView tables = Window.view(Parts.TABLES, TablesView.class);
    tables.choose("trials");
    Window.idle();
    NatTable table = Window.find("table-trials", NatTable.class);
    Window.front();
    table.forceFocus();
    Keys.rest(300);
    int all = table.getRowCount();
    Keys.plainly(() -> Keys.chord(SWT.CTRL, 'f'));
    Text text = Window.find("grid-find", Text.class);
    assertTrue(text.isFocusControl(), "Ctrl+F goes to the field");
    text.setText("Aldervale 4");
    Window.pump();
    assertTrue(Window.find("grid-find-count", Label.class).getText().startsWith("1"), Window.find("grid-find-count", Label.class).getText());
    Grid grid = (Grid) table.getData(Grid.GRID);
    assertTrue(grid.model().cell(grid.selected().orElseThrow().x, grid.selected().orElseThrow().y).text().contains("Aldervale 4"));
    Button only = Window.find("grid-find-only", Button.class);
    only.setSelection(true);
    only.notifyListeners(SWT.Selection, new Event());
    assertEquals(2, table.getRowCount());
    Window.key(text, SWT.ESC, SWT.ESC);
    assertEquals(all, table.getRowCount());
  }

  @Test
  void aWidthThatWasDrawnIsThereAgainInTheNextSheet() throws Exception {
    OpenStudy study = Window.demonstration();
    SheetEditor editor = Window.sheet(Window.firstTrial(study));
    NatTable table = Window.find("values", NatTable.class);
    table.doCommand(new ColumnResizeCommand(table, 2, 311));
    Window.pump();
    assertEquals(311, table.getColumnWidthByPosition(2), 2);
    Window.page().closeEditor(editor, false);
    Window.sheet(study.session().study().getSeries().get(0).getTrials().get(1));
    Window.pump();
    NatTable again = Window.find("values", NatTable.class);
    assertEquals(311, again.getColumnWidthByPosition(2), 8);
    again.forceFocus();
    ((Grid) again.getData(Grid.GRID)).select(1, 1);
    menu(again, Words.of("menu.grid.columns"), Words.of("menu.grid.widths"));
    assertTrue(again.getColumnWidthByPosition(2) < 280, "the usual width: " + again.getColumnWidthByPosition(2));
  }
}
