package daubline.ui.grid;

import java.util.Objects;

/**
 * One cell as it is painted.
 *
 * @param text its text
 * @param look how the text is written
 * @param mark the shape before it; every shape has its word in the text or the tip, none stands for itself
 * @param tip what a pointer resting on it and a screen reader are told besides the text; empty for nothing
 * @param shade how deep its ground is tinted, 0 to 1, beside the number that says the same; NaN for none
 */
public record GridCell(String text, Look look, Mark mark, String tip, double shade) {

  /** How the text of a cell is written. */
  public enum Look {
    /** As it is. */
    PLAIN,
    /** A number, set to the right. */
    NUMBER,
    /** The name of a row. */
    NAME,
    /** The heading of a group of rows. */
    GROUP,
    /** Something said to be missing, or taken over from elsewhere. */
    QUIET,
    /** Guessed, not evidenced. */
    GUESS,
    /** Typed, but not understood; not part of the study yet. */
    REFUSED,
    /** Not asked here. */
    VOID
  }

  /** The shape before a text. */
  public enum Mark { NONE, CONSISTENT, NOT_CONSISTENT, NOT_TESTED, CHECK_NEEDED }

  /** An empty cell. */
  public static final GridCell EMPTY = new GridCell("", Look.PLAIN, Mark.NONE, "");
  /** A cell where nothing is asked. */
  public static final GridCell VOID = new GridCell("", Look.VOID, Mark.NONE, "");

  /** A cell without a tint. */
  public GridCell(String text, Look look, Mark mark, String tip) {
    this(text, look, mark, tip, Double.NaN);
  }

  public GridCell {
    Objects.requireNonNull(text);
    Objects.requireNonNull(tip);
  }

  /** A cell of plain text. */
  public static GridCell of(String text) {
    return text == null || text.isEmpty() ? EMPTY : new GridCell(text, Look.PLAIN, Mark.NONE, "");
  }

  /** A cell of text with a look. */
  public static GridCell of(String text, Look look) {
    return new GridCell(text, look, Mark.NONE, "");
  }

  /** The same with a mark. */
  public GridCell marked(Mark newMark, String newTip) {
    return new GridCell(text, look, newMark, newTip, shade);
  }

  /** The same on a tinted ground. */
  public GridCell shaded(double share) {
    return new GridCell(text, look, mark, tip, share);
  }

  /** What it says in one line, as it is copied, found and ordered by. */
  String words() {
    return BarCell.words(text).replace('\n', ' ').replace('\t', ' ').strip();
  }

  /** Text and tip, as a screen reader says them. */
  @Override
  public String toString() {
    return tip.isEmpty() ? BarCell.words(text) : BarCell.words(text) + ", " + tip;
  }
}
