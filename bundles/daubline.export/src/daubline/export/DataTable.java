package daubline.export;

import daubline.base.Printed;
import daubline.base.ValueKind;
import java.util.ArrayList;
import java.util.List;

/** Makes tables fit for reckoning: a value and its uncertainty stand in two columns, each a number. */
public final class DataTable {

  private DataTable() {
  }

  /** The table with a column of standard uncertainties after each column that states some; the same where none does. */
  public static Table of(Table table) {
    boolean[] uncertain = new boolean[table.columns().size()];
    boolean any = false;
    for (List<Cell> row : table.rows()) {
      for (int c = 0; c < uncertain.length; c++) {
        uncertain[c] |= row.get(c).kind() == ValueKind.PLUS_MINUS;
        any |= uncertain[c];
      }
    }
    return any ? of(table, uncertain) : table;
  }

  private static Table of(Table table, boolean[] uncertain) {
    List<Column> columns = new ArrayList<>();
    List<List<Cell>> rows = new ArrayList<>();
    table.rows().forEach(row -> rows.add(new ArrayList<>()));
    for (int c = 0; c < table.columns().size(); c++) {
      Column column = table.columns().get(c);
      columns.add(column);
      if (uncertain[c]) {
        columns.add(Column.number(column.id() + "_u", column.heading() + ", standard uncertainty", column.unit()));
      }
      for (int r = 0; r < rows.size(); r++) {
        put(rows.get(r), table.rows().get(r).get(c), uncertain[c]);
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
