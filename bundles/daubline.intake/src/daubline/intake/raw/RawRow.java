package daubline.intake.raw;

import java.util.List;

/**
 * One row as it stands in a file.
 *
 * @param number the row's number as a person counts it, from 1; in a CSV file the line it starts in
 * @param cells its cells, without trailing empty ones
 */
public record RawRow(int number, List<RawCell> cells) {

  public RawRow {
    int length = cells.size();
    while (length > 0 && cells.get(length - 1).isEmpty()) {
      length--;
    }
    cells = List.copyOf(cells.subList(0, length));
  }

  /** The cell of a column counted from 0; empty when the row is shorter. */
  public RawCell cell(int column) {
    return column < cells.size() ? cells.get(column) : RawCell.EMPTY;
  }

  /** Whether no cell holds anything. */
  public boolean isEmpty() {
    return cells.isEmpty();
  }
}
