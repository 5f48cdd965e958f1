package daubline.ui.grid;

import daubline.ui.edit.Edits;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.IntFunction;
import org.eclipse.nebula.widgets.nattable.command.AbstractLayerCommandHandler;
import org.eclipse.nebula.widgets.nattable.coordinate.PositionCoordinate;
import org.eclipse.nebula.widgets.nattable.copy.command.CopyDataToClipboardCommand;
import org.eclipse.nebula.widgets.nattable.selection.SelectionLayer;

/** Copies the selected cells as lines with tabs, with the headings and their units first unless they are not wanted. */
final class GridCopy extends AbstractLayerCommandHandler<CopyDataToClipboardCommand> {

  private final GridModel model;
  private final SelectionLayer selection;

  GridCopy(GridModel model, SelectionLayer selection) {
    this.model = model;
    this.selection = selection;
  }

  void register() {
    selection.unregisterCommandHandler(CopyDataToClipboardCommand.class);
    selection.registerCommandHandler(this);
  }

  @Override
  public Class<CopyDataToClipboardCommand> getCommandClass() {
    return CopyDataToClipboardCommand.class;
  }

  @Override
  protected boolean doCommand(CopyDataToClipboardCommand command) {
    Edits.copy(text(true));
    return true;
  }

  /** The selected cells. */
  String text(boolean headings) {
    SortedSet<Integer> columns = new TreeSet<>();
    SortedSet<Integer> rows = new TreeSet<>();
    for (PositionCoordinate cell : selection.getSelectedCellPositions()) {
      columns.add(cell.columnPosition);
      rows.add(cell.rowPosition);
    }
    StringBuilder text = new StringBuilder();
    if (headings) {
      line(text, columns, c -> model.heading(c).replace('\n', ' ').replace('\t', ' '));
    }
    rows.forEach(row -> line(text, columns, c -> model.cell(c, row).words()));
    return rows.isEmpty() ? "" : text.toString();
  }

  private static void line(StringBuilder text, SortedSet<Integer> columns, IntFunction<String> cell) {
    text.append(String.join("\t", columns.stream().map(cell::apply).toList())).append('\n');
  }
}
