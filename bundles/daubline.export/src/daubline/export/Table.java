package daubline.export;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

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

  /**
   * The same in another language: title, caption, headings, footnotes and the tool's own words in cells. Ids, numbers and what
   * a person wrote stay.
   */
  public Table in(UnaryOperator<String> wording) {
    List<Column> told = columns.stream().map(c -> new Column(c.id(), wording.apply(c.heading()), wording.apply(c.unit()), c.kind())).toList();
    return new Table(id, wording.apply(title), wording.apply(caption), told, rows.stream().map(row -> told(row, wording)).toList(),
        notes.stream().map(wording).toList());
  }

  private List<Cell> told(List<Cell> row, UnaryOperator<String> wording) {
    List<Cell> told = new ArrayList<>();
    for (int c = 0; c < row.size(); c++) {
      Cell cell = row.get(c);
      boolean words = columns.get(c).kind() == Column.Kind.WORDS || columns.get(c).kind() == Column.Kind.NUMBER && !cell.kind().isNumber();
      Cell read = words && !cell.text().isEmpty() ? cell.reading(wording.apply(cell.text())) : cell;
      told.add(cell.trail() == null ? read : read.from(cell.trail().in(wording)));
    }
    return told;
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
