package daubline.ui.compare;

import daubline.base.Trail;
import daubline.ui.Words;
import daubline.ui.grid.Grid;
import daubline.ui.grid.GridCell;
import daubline.ui.look.Described;
import daubline.ui.look.Pages;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** A table with a sentence above it; the names at the left stay in sight. */
final class TablePane {

  private final Composite page;
  private final Described described;
  private final String name;
  private final CellTable table = new CellTable();
  private Grid grid;

  /** @param key key of its name, and its id */
  TablePane(Composite parent, String key) {
    name = key;
    page = Pages.tight(parent, 1);
    described = new Described(page);
    described.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
  }

  /** Shows a sentence, which says how the table is made, and the table, with what each row was worked out of. */
  void show(String about, List<Heading> headings, List<List<GridCell>> rows, IntFunction<List<Trail>> from) {
    boolean fits = grid != null && headings.size() == table.columns();
    table.show(headings, rows, from, about);
    described.say(about);
    if (fits) {
      grid.rebuild();
      return;
    }
    if (grid != null) {
      grid.control().dispose();
    }
    grid = Grid.withFixedNames(described.body(), Words.of(name), table);
    grid.control().setData("id", name);
    described.body().layout(true, true);
  }

  /** Shows nothing. */
  void clear() {
    described.say("");
    if (grid != null) {
      grid.control().dispose();
      grid = null;
    }
  }

  /** Where buttons go, below the table. */
  Composite page() {
    return page;
  }

  Control control() {
    return page;
  }

  /** The grid, once something was shown. */
  Grid grid() {
    return grid;
  }

  /** The selected row. */
  Optional<Integer> selectedRow() {
    return grid == null ? Optional.empty() : grid.selected().map(p -> p.y);
  }
}
