package daubline.ui.plan;

import daubline.ui.Words;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.ListModel;
import java.util.List;

/** Rows of text, the first cell of each its name; the whole text is told by the pointer. */
final class LinesModel extends ListModel<List<String>> {

  LinesModel(String[] headings, double... shares) {
    super(headings, shares);
  }

  @Override
  protected GridCell cell(int column, int row, List<String> line) {
    String text = Words.said(line.get(column));
    return text.isEmpty() ? GridCell.EMPTY : new GridCell(text, column == 0 ? Look.NAME : Look.PLAIN, GridCell.Mark.NONE, text.length() > 30 ? text : "");
  }
}
