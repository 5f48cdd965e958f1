package daubline.publication;

import daubline.base.Trail;
import daubline.export.Cell;
import daubline.export.Column;
import daubline.export.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Where the numbers of all tables come from, one value a row. */
final class TrailTable {

  private TrailTable() {
  }

  /** The table for these tables, which are numbered from 1 in the order given. */
  static Table of(List<Table> tables) {
    List<List<Cell>> rows = new ArrayList<>();
    for (int t = 0; t < tables.size(); t++) {
      add(rows, t + 1, tables.get(t));
    }
    return new Table("where-from", "Where the Numbers Come From", "For each value of the tables: as typed, who recorded it or where it is printed, how it was got.",
        List.of(Column.number("table", "Table", ""), Column.number("row", "Row", ""), Column.text("column", "Column"), Column.text("value", "Value"),
            Column.text("trail", "Where from")), rows, List.of("Rows are counted below the heading."));
  }

  private static void add(List<List<Cell>> rows, int number, Table table) {
    for (int r = 0; r < table.rows().size(); r++) {
      for (int c = 0; c < table.columns().size(); c++) {
        Cell cell = table.rows().get(r).get(c);
        if (cell.trail() != null && !cell.trail().from().isEmpty()) {
          rows.add(List.of(Cell.fixed(number, 0), Cell.fixed(r + 1, 0), Cell.text(table.columns().get(c).heading()), cell.from(null), Cell.text(words(cell.trail()))));
        }
      }
    }
  }

  private static String words(Trail trail) {
    return trail.from().stream().map(TrailTable::step).collect(Collectors.joining("; "));
  }

  private static String step(Trail step) {
    String here = step.value().isEmpty() ? step.what() : step.what() + ": " + step.value();
    return step.from().isEmpty() ? here : here + " (" + words(step) + ")";
  }
}
