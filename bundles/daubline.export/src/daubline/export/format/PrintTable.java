package daubline.export.format;

import daubline.base.ValueKind;
import daubline.export.Cell;
import daubline.export.Column;
import daubline.export.Style;
import daubline.export.Table;
import java.util.List;
import java.util.stream.IntStream;

/** A table in print: without columns in which nothing stands. */
final class PrintTable {

  private PrintTable() {
  }

  /** The table without columns of which every cell is empty or not recorded; unchanged when it has no rows. */
  static Table of(Table table) {
    if (table.rows().isEmpty()) {
      return table;
    }
    int[] filled = IntStream.range(0, table.columns().size()).filter(c -> table.cells(c).stream().anyMatch(PrintTable::says)).toArray();
    List<Column> columns = IntStream.of(filled).mapToObj(table.columns()::get).toList();
    List<List<Cell>> rows = table.rows().stream().map(row -> IntStream.of(filled).mapToObj(row::get).toList()).toList();
    return new Table(table.id(), table.title(), table.caption(), columns, rows, table.notes());
  }

  private static boolean says(Cell cell) {
    return !cell.text().isEmpty() && cell.kind() != ValueKind.NOT_RECORDED;
  }

  /** The sentence printed in place of a table without rows. */
  static String nothing(Style style) {
    return style.wording().apply("The study records nothing of this.");
  }

  /** The notes below a printed table. */
  static List<String> notes(Table table, Style style) {
    return table.rows().isEmpty() ? List.of() : style.notes(table);
  }
}
