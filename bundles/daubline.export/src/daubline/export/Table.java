package daubline.export;

import java.util.List;

/**
 * A table as values, before any file or screen.
 *
 * @param id the short name of its specification
 * @param title the title
 * @param caption what it shows, in full sentences
 * @param columns the columns
 * @param rows the rows; each has as many cells as there are columns
 * @param notes footnotes in order; cells refer to them by number, or nobody does when they concern the whole table
 */
public record Table(String id, String title, String caption, List<Column> columns, List<List<Cell>> rows, List<String> notes) {

  public Table {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    notes = List.copyOf(notes);
    for (List<Cell> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException("A row of table " + id + " has " + row.size() + " cells for " + columns.size() + " columns");
      }
    }
  }

  /** The cells of one column from top to bottom. */
  public List<Cell> cells(int column) {
    return rows.stream().map(row -> row.get(column)).toList();
  }

  /** Whether a cell refers to a footnote, counted from 1. */
  public boolean isMarked(int note) {
    return rows.stream().flatMap(List::stream).anyMatch(cell -> cell.note() == note);
  }
}
