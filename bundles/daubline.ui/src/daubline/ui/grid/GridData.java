package daubline.ui.grid;

import org.eclipse.nebula.widgets.nattable.data.IDataProvider;

/** Passes the model of a grid on to the grid widget. */
final class GridData implements IDataProvider {

  private final GridModel model;

  GridData(GridModel model) {
    this.model = model;
  }

  @Override
  public Object getDataValue(int column, int row) {
    return column < model.columns() && row < model.rows() ? model.cell(column, row) : GridCell.EMPTY;
  }

  @Override
  public void setDataValue(int column, int row, Object value) {
    String text = value == null ? "" : value.toString();
    if (column < model.columns() && row < model.rows() && !text.equals(model.editText(column, row))) {
      model.put(column, row, text);
    }
  }

  @Override
  public int getColumnCount() {
    return model.columns();
  }

  @Override
  public int getRowCount() {
    return model.rows();
  }

  /** The headings as a second provider of one row. */
  static IDataProvider headings(ArrangedModel model) {
    return new IDataProvider() {
      @Override
      public Object getDataValue(int column, int row) {
        return column < model.columns() ? new GridCell(model.signed(column), GridCell.Look.GROUP, GridCell.Mark.NONE, model.columnTip(column)) : GridCell.EMPTY;
      }

      @Override
      public void setDataValue(int column, int row, Object value) {
        throw new IllegalStateException("Headings are only read");
      }

      @Override
      public int getColumnCount() {
        return model.columns();
      }

      @Override
      public int getRowCount() {
        return 1;
      }
    };
  }
}
