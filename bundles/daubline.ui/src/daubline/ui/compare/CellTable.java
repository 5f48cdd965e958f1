package daubline.ui.compare;

import daubline.base.Trail;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridModel;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;

/** Rows of cells under headings that may change in number, each column as wide as its longest text within reason. */
final class CellTable implements GridModel {

  private static final int MOST = 44;

  private List<Heading> headings = List.of(new Heading("", ""));
  private List<List<GridCell>> rows = List.of();
  private IntFunction<List<Trail>> from = row -> List.of();
  private String how = "";

  /**
   * Shows others; each row has a cell for each heading.
   *
   * @param rowFrom what a row was worked out of
   * @param method how
   */
  void show(List<Heading> newHeadings, List<List<GridCell>> newRows, IntFunction<List<Trail>> rowFrom, String method) {
    from = rowFrom;
    how = method;
    headings = List.copyOf(newHeadings);
    rows = newRows.stream().map(List::copyOf).toList();
  }

  @Override
  public int columns() {
    return headings.size();
  }

  @Override
  public int rows() {
    return rows.size();
  }

  @Override
  public String heading(int column) {
    return headings.get(column).text();
  }

  @Override
  public String key(int column) {
    return headings.get(column).key();
  }

  @Override
  public String widest(int column) {
    String longest = "";
    for (List<GridCell> row : rows) {
      GridCell cell = row.get(column);
      String text = cell.mark() == GridCell.Mark.NONE ? cell.text() : "MM " + cell.text();
      longest = text.length() > longest.length() ? text : longest;
    }
    return longest.substring(0, Math.min(MOST, longest.length()));
  }

  @Override
  public double share(int column) {
    return Math.clamp(Math.max(widest(column).length(), headings.get(column).text().length()), 6, MOST);
  }

  @Override
  public Optional<Trail> origin(int column, int row) {
    return Optional.of(Trail.reckoned(cell(0, row).text() + ", " + heading(column), cell(column, row).text(), how, from.apply(row)));
  }

  @Override
  public GridCell cell(int column, int row) {
    return rows.get(row).get(column);
  }
}
