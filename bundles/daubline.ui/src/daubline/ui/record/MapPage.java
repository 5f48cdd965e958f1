package daubline.ui.record;

import daubline.charts.Figure;
import daubline.record.EntryTable;
import daubline.ui.Words;
import daubline.ui.look.Pages;
import daubline.ui.sheet.Page;
import daubline.ui.views.FigurePane;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** A table of places with the map that is drawn of them beside it; the map follows every change. */
final class MapPage implements Page {

  private static final int ROOM = 90;

  private final SashForm sash;
  private final RecordPage rows;
  private final FigurePane map;
  private final Function<EObject, Optional<Figure>> draw;
  private final String otherwise;

  /**
   * A page.
   *
   * @param draw draws the map for the selected row, which may be null
   */
  MapPage(Composite parent, EntryTable table, Function<EObject, Optional<Figure>> draw) {
    this.draw = draw;
    otherwise = Words.of("record." + table.id() + ".none");
    sash = Pages.beside(parent, ROOM);
    rows = new RecordPage(sash, table);
    map = new FigurePane(sash);
    map.control().setData("id", table.id() + ".map");
    sash.setWeights(1, 1);
    rows.onSelect(this::show);
  }

  private void show() {
    map.show(draw.apply(rows.selected().orElse(null)).orElse(null), otherwise);
  }

  @Override
  public Control control() {
    return sash;
  }

  @Override
  public void refresh() {
    rows.refresh();
    show();
  }

  @Override
  public boolean reveal(EObject thing) {
    return rows.reveal(thing);
  }

  @Override
  public void focus() {
    rows.focus();
  }
}
