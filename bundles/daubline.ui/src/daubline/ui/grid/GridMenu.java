package daubline.ui.grid;

import daubline.ui.Words;
import daubline.ui.edit.EditTarget;
import daubline.ui.edit.EditTarget.Deed;
import daubline.ui.edit.Edits;
import daubline.ui.explain.WhatIsThis;
import daubline.ui.explain.WhereFrom;
import java.util.Optional;
import java.util.stream.IntStream;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

/** The context menu of a grid, the same in every part: what is done to the selected cells, and to their column. */
final class GridMenu {

  /** Pixels beside the line between two headings at which a width is drawn. */
  private static final int EDGE = 5;

  private final Grid grid;
  private final NatTable table;

  GridMenu(Grid grid) {
    this.grid = grid;
    this.table = grid.control();
  }

  void install() {
    table.addListener(SWT.MenuDetect, this::open);
    table.addListener(SWT.MouseDoubleClick, e -> {
      // a heading clicked twice puts the rows in its order, and then the other way round
      boolean between = table.getColumnPositionByX(e.x - EDGE) != table.getColumnPositionByX(e.x + EDGE);
      if (e.button == 1 && !between) {
        grid.placeAt(e.x, e.y).filter(p -> p.y < 0).ifPresent(p -> turn(p.x));
      }
    });
    table.addListener(SWT.KeyDown, e -> {
      if (e.stateMask == SWT.MOD1 && Character.toLowerCase(e.keyCode) == 'd') {
        target().fill();
        e.doit = false;
      }
    });
  }

  private GridEdit target() {
    return (GridEdit) table.getData(EditTarget.KEY);
  }

  private void turn(int place) {
    String id = grid.arranged().columnId(place);
    boolean again = grid.arranged().sorted().equals(id);
    sort(again && grid.arranged().isDown() ? "" : id, again);
  }

  private void sort(String id, boolean down) {
    grid.arrange(() -> grid.arranged().sort(id, down));
  }

  private void open(Event event) {
    boolean byKey = event.detail == SWT.MENU_KEYBOARD;
    Point at = table.toControl(event.x, event.y);
    Optional<Point> clicked = byKey ? grid.place() : grid.placeAt(at.x, at.y);
    clicked.filter(p -> p.y >= 0 && !grid.isSelected(p.x, p.y)).ifPresent(p -> grid.selectPlace(p.x, p.y));
    if (!table.isFocusControl()) {
      table.setFocus();
    }
    Menu menu = new Menu(table.getShell(), SWT.POP_UP);
    boolean onHeading = clicked.filter(p -> p.y < 0).isPresent();
    if (!onHeading) {
      grid.offers().forEach(maker -> maker.accept(menu));
      if (menu.getItemCount() > 0) {
        new MenuItem(menu, SWT.SEPARATOR);
      }
      cells(menu);
    }
    clicked.ifPresent(p -> column(menu, p.x));
    columns(menu);
    if (!onHeading) {
      new MenuItem(menu, SWT.SEPARATOR);
      item(menu, "origin.menu", WhereFrom.of(table).isPresent(), () -> WhereFrom.ask(table));
      item(menu, "menu.grid.what", grid.place().isPresent(), () -> WhatIsThis.ask(table));
    }
    menu.addListener(SWT.Hide, e -> table.getDisplay().asyncExec(menu::dispose));
    if (byKey) {
      menu.setLocation(table.toDisplay(grid.below()));
    } else {
      menu.setLocation(event.x, event.y);
    }
    event.doit = false;
    menu.setVisible(true);
  }

  private void cells(Menu menu) {
    deed(menu, Deed.COPY);
    item(menu, "menu.grid.copyPlain", target().can(Deed.COPY), () -> Edits.copy(grid.copied(false)));
    if (grid.arranged().rows() > 0 && IntStream.range(0, grid.arranged().columns()).anyMatch(c -> grid.place().filter(p -> grid.arranged().isEditable(c, p.y)).isPresent())) {
      deed(menu, Deed.CUT);
      deed(menu, Deed.PASTE);
      deed(menu, Deed.DELETE);
      item(menu, "menu.grid.fill", grid.places().size() > 1, () -> target().fill());
    }
    deed(menu, Deed.SELECT_ALL);
    deed(menu, Deed.FIND);
    new MenuItem(menu, SWT.SEPARATOR);
  }

  private void deed(Menu menu, Deed deed) {
    item(menu, "menu.grid." + deed.name(), target().can(deed), () -> target().act(deed));
  }

  private void column(Menu menu, int place) {
    ArrangedModel model = grid.arranged();
    if (model.isSortable()) {
      String id = model.columnId(place);
      item(menu, "menu.grid.up", true, () -> sort(id, false));
      item(menu, "menu.grid.down", true, () -> sort(id, true));
      item(menu, "menu.grid.asIs", !model.sorted().isEmpty(), () -> sort("", false));
    }
    boolean stays = grid.isFixed() && model.column(place) == 0 || model.columns() < 2;
    MenuItem out = new MenuItem(menu, SWT.PUSH);
    out.setText(Words.of("menu.grid.out", model.heading(place).replace('\n', ' ').replace("&", "&&")));
    out.setEnabled(!stays);
    out.addListener(SWT.Selection, e -> grid.arrange(() -> model.leftOut().add(model.columnId(place))));
  }

  private void columns(Menu menu) {
    ArrangedModel model = grid.arranged();
    MenuItem cascade = new MenuItem(menu, SWT.CASCADE);
    cascade.setText(Words.of("menu.grid.columns"));
    Menu all = new Menu(cascade);
    cascade.setMenu(all);
    for (int c = grid.isFixed() ? 1 : 0; c < model.base().columns(); c++) {
      String id = model.idOf(c);
      MenuItem shown = new MenuItem(all, SWT.CHECK);
      shown.setText(model.base().heading(c).replace('\n', ' ').replace("&", "&&"));
      shown.setSelection(!model.leftOut().contains(id));
      shown.setEnabled(model.leftOut().contains(id) || model.columns() > 1);
      shown.addListener(SWT.Selection, e -> grid.arrange(() -> {
        if (!model.leftOut().remove(id)) {
          model.leftOut().add(id);
        }
      }));
    }
    new MenuItem(all, SWT.SEPARATOR);
    item(all, "menu.grid.all", !model.leftOut().isEmpty(), () -> grid.arrange(model.leftOut()::clear));
    item(all, "menu.grid.widths", true, grid::usualWidths);
  }

  private static MenuItem item(Menu menu, String key, boolean enabled, Runnable action) {
    MenuItem item = new MenuItem(menu, SWT.PUSH);
    item.setText(Words.of(key));
    item.setEnabled(enabled);
    item.addListener(SWT.Selection, e -> action.run());
    return item;
  }
}
