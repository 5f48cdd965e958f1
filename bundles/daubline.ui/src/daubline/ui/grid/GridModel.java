package daubline.ui.grid;

import daubline.base.Trail;
import daubline.ui.explain.Explanation;
import daubline.ui.explain.Explanations;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

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

  /** What a column holds, in full sentences, as a pointer resting on its heading is told; empty when the heading says it. */
  default String columnTip(int column) {
    return key(column).isEmpty() ? "" : Explanations.column(key(column), heading(column)).lines().stream().map(Explanation.Line::text).findFirst().orElse("");
  }

  /** By what a person's choice of columns is remembered; stays the same in every language. */
  default String columnId(int column) {
    return key(column).isEmpty() ? heading(column) : key(column);
  }

  /** Whether rows may be shown in another order; not where they stand in groups or are set in below each other. */
  default boolean isSortable() {
    return true;
  }

  /** How many rows at the end stay there in every order, such as the one that is not begun yet. */
  default int lastRows() {
    return 0;
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
   * Takes what was typed into several cells of a row, by column; a row that is not begun yet becomes one.
   *
   * @param cells texts by column, from left to right
   */
  default void putLine(int row, SortedMap<Integer, String> cells) {
    cells.forEach((column, text) -> put(column, row, text));
  }

  /**
   * Does several things as one change.
   *
   * @param label the name of the change, as undo shows it
   */
  default void together(String label, Runnable steps) {
    steps.run();
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
