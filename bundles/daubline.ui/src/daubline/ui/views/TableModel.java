package daubline.ui.views;

import daubline.export.Cell;
import daubline.export.Column;
import daubline.export.Table;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.GridModel;

/** A table of the publication as a grid. */
final class TableModel implements GridModel {

  private Table table;

  void show(Table now) {
    table = now;
  }

  Cell content(int column, int row) {
    return table.rows().get(row).get(column);
  }

  @Override
  public int columns() {
    return table == null ? 0 : table.columns().size();
  }

  @Override
  public int rows() {
    return table == null ? 0 : table.rows().size();
  }

  @Override
  public String heading(int column) {
    return table.columns().get(column).fullHeading();
  }

  @Override
  public double share(int column) {
    return table.columns().get(column).kind() == Column.Kind.NUMBER ? 0.7 : 1.3;
  }

  @Override
  public GridCell cell(int column, int row) {
    Cell cell = content(column, row);
    boolean number = table.columns().get(column).kind() == Column.Kind.NUMBER;
    return GridCell.of(cell.text(), cell.kind().isMissing() ? Look.QUIET : number ? Look.NUMBER : Look.PLAIN);
  }
}
