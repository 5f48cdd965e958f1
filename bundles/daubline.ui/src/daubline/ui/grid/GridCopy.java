package daubline.ui.grid;

import java.util.SortedSet;
import java.util.TreeSet;
import org.eclipse.nebula.widgets.nattable.command.AbstractLayerCommandHandler;
import org.eclipse.nebula.widgets.nattable.copy.command.CopyDataToClipboardCommand;
import org.eclipse.nebula.widgets.nattable.coordinate.PositionCoordinate;
import org.eclipse.nebula.widgets.nattable.selection.SelectionLayer;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;

/** Copies the selected cells as lines with tabs, with the headings and their units first. */
final class GridCopy extends AbstractLayerCommandHandler<CopyDataToClipboardCommand> {

  private final Grid grid;
  private final SelectionLayer selection;

  GridCopy(Grid grid, SelectionLayer selection) {
    this.grid = grid;
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
    String text = text();
    if (!text.isEmpty()) {
      Clipboard clipboard = new Clipboard(grid.control().getDisplay());
      clipboard.setContents(new Object[] {text}, new Transfer[] {TextTransfer.getInstance()});
      clipboard.dispose();
    }
    return true;
  }

  private String text() {
    SortedSet<Integer> columns = new TreeSet<>();
    SortedSet<Integer> rows = new TreeSet<>();
    for (PositionCoordinate cell : selection.getSelectedCellPositions()) {
      columns.add(cell.columnPosition);
      rows.add(cell.rowPosition);
    }
    StringBuilder text = new StringBuilder();
    line(text, columns, c -> grid.model().heading(c));
    rows.forEach(row -> line(text, columns, c -> grid.model().cell(c, row).text()));
    return rows.isEmpty() ? "" : text.toString();
  }

  private static void line(StringBuilder text, SortedSet<Integer> columns, java.util.function.IntFunction<String> cell) {
    text.append(String.join("\t", columns.stream().map(c -> cell.apply(c).replace('\n', ' ').replace('\t', ' ')).toList())).append('\n');
  }
}
