package daubline.export;

import daubline.base.Printed;
import daubline.base.ValueKind;
import java.util.ArrayList;
import java.util.List;

/** Makes tables fit for reckoning: a value and its uncertainty stand in two columns, each a number. */
public final class DataTable {

  private DataTable() {
  }

  /** The table with a column of standard uncertainties after each column that states some. */
  public static Table of(Table table) {
    List<Column> columns = new ArrayList<>();
    List<List<Cell>> rows = new ArrayList<>();
    table.rows().forEach(row -> rows.add(new ArrayList<>()));
    for (int c = 0; c < table.columns().size(); c++) {
      boolean uncertain = table.cells(c).stream().anyMatch(cell -> cell.kind() == ValueKind.PLUS_MINUS);
      Column column = table.columns().get(c);
      columns.add(column);
      if (uncertain) {
        columns.add(Column.number(column.id() + "_u", column.heading() + ", standard uncertainty", column.unit()));
      }
      for (int r = 0; r < rows.size(); r++) {
        put(rows.get(r), table.rows().get(r).get(c), uncertain);
      }
    }
    return new Table(table.id(), table.title(), table.caption(), columns, List.copyOf(rows), table.notes());
  }

  private static void put(List<Cell> row, Cell cell, boolean uncertain) {
    if (!uncertain || cell.kind() != ValueKind.PLUS_MINUS) {
      row.add(cell);
      if (uncertain) {
        row.add(Cell.EMPTY);
      }
      return;
    }
    int decimals = Math.max(0, Printed.decimals(cell.sigma()));
    row.add(new Cell(Printed.fixed(cell.number(), decimals), cell.number(), Double.NaN, ValueKind.EXACT, cell.trail(), cell.note()));
    row.add(Cell.fixed(cell.sigma(), decimals));
  }
}
