package daubline.ui.plan;

import daubline.base.Trail;
import daubline.ui.Words;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.ListModel;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Rows of text, the first cell of each its name; the whole text is told by the pointer. */
final class LinesModel extends ListModel<List<String>> {

  private Function<List<String>, Trail> origins;

  LinesModel(String[] headings, double... shares) {
    super(headings, shares);
  }

  /** Says where the numbers of a row come from. */
  LinesModel from(Function<List<String>, Trail> origin) {
    origins = origin;
    return this;
  }

  @Override
  protected Optional<Trail> origin(int column, int row, List<String> line) {
    return Optional.ofNullable(origins).map(o -> o.apply(line)).map(t -> new Trail(line.get(0) + ", " + heading(column), line.get(column), t.subject(), t.from()));
  }

  @Override
  protected GridCell cell(int column, int row, List<String> line) {
    String text = Words.said(line.get(column));
    return text.isEmpty() ? GridCell.EMPTY : new GridCell(text, column == 0 ? Look.NAME : Look.PLAIN, GridCell.Mark.NONE, text.length() > 30 ? text : "");
  }
}
