package daubline.intake;

import daubline.base.Finding;
import java.util.List;

/**
 * What one row of a file would do.
 *
 * @param number the row's number in the file
 * @param state what becomes of it
 * @param name what the row is about, in its own words
 * @param changes what it changes in things that are there already, in words
 * @param findings what was noticed about it
 */
public record PreviewRow(int number, State state, String name, List<String> changes, List<Finding> findings) {

  /** What becomes of a row. */
  public enum State {
    /** It brings something new. */
    ADDED("added"),
    /** It changes something that is there. */
    UPDATED("updated"),
    /** The study says all of it already. */
    UNCHANGED("unchanged"),
    /** It cannot be taken over. */
    FAULTY("faulty");

    private final String word;

    State(String word) {
      this.word = word;
    }

    /** The word that screens print. */
    public String word() {
      return word;
    }
  }
}
