package daubline.ui.views;

import daubline.analysis.StudyResults;
import daubline.base.Trail;
import daubline.base.Variables;
import daubline.export.Cell;
import daubline.export.CellOrigins;
import daubline.export.Column;
import daubline.export.Table;
import daubline.ui.explain.Explanation;
import daubline.ui.explain.Explanations;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.GridModel;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A table of the publication as a grid. */
final class TableModel implements GridModel {

  private static final int LONGEST = 18;
  private static final int LOOKED_AT = 100;

  private Table table;
  private StudyResults results;

  void show(Table now, StudyResults of) {
    table = now;
    results = of;
  }

  @Override
  public Optional<Trail> origin(int column, int row) {
    return CellOrigins.of(results, table, row, column);
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
  public String columnId(int column) {
    return table.columns().get(column).id();
  }

  /** The variable of the column where it is one; otherwise what the table as a whole says. */
  @Override
  public List<Explanation> explain(int column, int row) {
    String about = String.join(" ", Stream.concat(Stream.of(table.caption()), table.notes().stream()).toList());
    Explanation whole = Explanations.said(heading(column) + " – " + table.title(), about);
    return Stream.concat(Variables.standard().find(table.columns().get(column).id()).map(Explanations::variable).stream(), Stream.of(whole)).toList();
  }

  @Override
  public double share(int column) {
    return table.columns().get(column).kind() == Column.Kind.NUMBER ? 0.7 : 1.3;
  }

  /** Numbers and short texts of the first rows are shown whole, of longer ones the beginning. */
  @Override
  public String widest(int column) {
    return table.rows().stream().limit(LOOKED_AT).map(row -> row.get(column).text()).map(t -> t.length() <= LONGEST ? t : t.substring(0, LONGEST))
        .max(Comparator.comparingInt(String::length)).orElse("");
  }

  @Override
  public GridCell cell(int column, int row) {
    Cell cell = content(column, row);
    boolean number = table.columns().get(column).kind() == Column.Kind.NUMBER;
    return GridCell.of(cell.text(), cell.kind().isMissing() ? Look.QUIET : number ? Look.NUMBER : Look.PLAIN);
  }
}
