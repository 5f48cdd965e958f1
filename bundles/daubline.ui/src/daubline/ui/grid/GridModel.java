package daubline.ui.grid;

import daubline.base.Trail;
import daubline.ui.explain.Explanation;
import daubline.ui.explain.Explanations;
import java.util.List;
import java.util.Optional;

/** What a grid shows and what may be typed into it. Columns and rows count from 0. */
public interface GridModel {

  /** How many columns. */
  int columns();

  /** How many rows. */
  int rows();

  /** The heading of a column, with its unit. */
  String heading(int column);

  /** The share of the width that a column gets, in relation to the others; 1 is usual. */
  default double share(int column) {
    return 1;
  }

  /** The text that a column is at least wide enough for. */
  default String widest(int column) {
    return heading(column);
  }

  /** A cell. */
  GridCell cell(int column, int row);

  /** The key of a column's heading, under which stands what it holds; empty when a column has none. */
  default String key(int column) {
    return "";
  }

  /** What is to be known about a cell and its column, that about the thing of the row first. */
  default List<Explanation> explain(int column, int row) {
    return key(column).isEmpty() ? List.of() : List.of(Explanations.column(key(column), heading(column)));
  }

  /** Where what stands in a cell comes from; every cell with a number has an origin, and a test walks over all. */
  default Optional<Trail> origin(int column, int row) {
    return Optional.empty();
  }

  /** Whether something may be typed into a cell. */
  default boolean isEditable(int column, int row) {
    return false;
  }

  /** The text with which typing in a cell begins. */
  default String editText(int column, int row) {
    return cell(column, row).text();
  }

  /** The words that are offered in a cell; empty for a free text. */
  default List<String> choices(int column, int row) {
    return List.of();
  }

  /** Takes what was typed into a cell; empty text takes the value away. */
  default void put(int column, int row, String text) {
    throw new IllegalStateException("This grid is only read");
  }

  /**
   * Where Enter goes from a cell, as column and row, in a grid that is filled in cell after cell.
   *
   * @return null in a grid where Enter goes to the row below
   */
  default int[] next(int column, int row) {
    return null;
  }

  /** How many lines of text a row has. */
  default int linesPerRow() {
    return 1;
  }
}
