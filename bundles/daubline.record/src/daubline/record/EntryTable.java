package daubline.record;

import daubline.base.Finding;
import daubline.base.Variable;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;

/**
 * A table that people fill in: rows are things of the study, the last row is the next thing. Rows and columns count
 * from 0. Every understood text is one named change of the study; a text that was not understood stays in its cell, out
 * of the study, until it is mended.
 */
public interface EntryTable {

  /** The code of the finding about a text that may mean several words on offer. */
  String SEVERAL = "value.several";

  /** A stable name, also the stem of its words. */
  String id();

  /** Its columns' ids in order. */
  List<String> columns();

  /** The heading of a column with its unit. */
  String heading(int column);

  /** What a column asks for, in full sentences; empty when the heading says it. */
  String about(int column);

  /** The share of the width that a column gets. */
  double share(int column);

  /** How many rows, with the empty one at the end where things can be added. */
  int rows();

  /** What stands in a cell. */
  String text(int row, int column);

  /** The text with which typing begins. */
  String editText(int row, int column);

  /** Whether a column is one that people fill in, not one that is worked out. */
  boolean isTyped(int column);

  /** Whether the sheet on paper has this column. */
  default boolean isPrinted(int column) {
    return isTyped(column);
  }

  /** Whether a column holds dates, with or without their time. */
  boolean isDate(int column);

  /** Whether something can be typed into a cell. */
  boolean isEditable(int row, int column);

  /** Whether Enter stops at a cell: what the kind of row asks for. */
  boolean isAsked(int row, int column);

  /** The words offered in a cell. */
  List<String> choices(int row, int column);

  /** Takes a typed text; says what is wrong with it. */
  Optional<Finding> put(int row, int column, String text);

  /**
   * Does several things as one change of the study.
   *
   * @param label the name of the change, as undo shows it
   */
  void together(String label, Runnable steps);

  /** What is wrong or odd about a cell. */
  Optional<Finding> finding(int row, int column);

  /** Whether the text of a cell was refused and is not part of the study. */
  boolean isRefused(int row, int column);

  /** How far a row is set in, for trees. */
  default int depth(int row) {
    return 0;
  }

  /** The variable that a cell is about: that of its column, or that of the value in its row; empty when it is about none. */
  Optional<Variable> variable(int row, int column);

  /** The thing of a row; empty for the row not begun yet. */
  Optional<EObject> object(int row);

  /** Whether rows can be added. */
  boolean canAdd();

  /** Whether rows are taken out by hand though they are not added here. */
  default boolean isShortened() {
    return canAdd();
  }

  /** Whether the thing of a row can be taken out by itself. */
  boolean canRemove(int row);

  /** Takes the thing of a row out of the study. */
  void remove(int row);

  /** What the table says as a whole, such as what is left; empty when nothing. */
  default String summary() {
    return "";
  }

  /** What is wrong with the table as a whole; it is said in place of the summary. */
  default Optional<Finding> problem() {
    return Optional.empty();
  }

  /** Reads the rows from the study again. */
  void refresh();
}
