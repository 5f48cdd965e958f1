package daubline.intake;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One thing that was recognised in a laboratory's table. What is only guessed must be confirmed or changed by a person before
 * the table can be taken over.
 *
 * @param aspect what kind of thing it is
 * @param where the column, row or table it is about
 * @param found what was recognised, in the text by which a setting states it; empty when nothing can even be guessed
 * @param why what speaks for it
 * @param state whether it has to be confirmed
 * @param setting the setting that states it or something else; empty when it cannot be changed
 * @param choices the texts that the setting may have; any text may stand in a setting without choices
 */
public record Recognised(Aspect aspect, String where, String found, String why, State state, String setting, List<String> choices) {

  /** What kind of thing was recognised. */
  public enum Aspect {
    /** Whether samples are rows or columns, and which row holds units. */
    LAYOUT("layout"),
    /** What a column is. */
    COLUMN("columns"),
    /** Which element or oxide a column holds, and whether an element is asked for as an oxide. */
    FORMULA("formulas"),
    /** The unit of a column. */
    UNIT("units"),
    /** How iron is reported. */
    IRON("iron"),
    /** Rows that are no analysis: detection limits, means. */
    ROLE("rows"),
    /** The trial, lot or sheet a sample belongs to. */
    BELONGING("belonging"),
    /** Repeated measurements of one sample. */
    REPLICATE("replicates"),
    /** What the components add up to, beside the printed total. */
    TOTAL("totals"),
    /** Cells that hold a limit or a reason instead of a number. */
    LIMIT("limits");

    private final String word;

    Aspect(String word) {
      this.word = word;
    }

    /** The word by which settings name it. */
    public String word() {
      return word;
    }

    /** The aspect of a word. */
    public static Optional<Aspect> find(String word) {
      return Arrays.stream(values()).filter(a -> a.word.equals(word.strip())).findFirst();
    }

    /** All words. */
    public static String words() {
      return Arrays.stream(values()).map(Aspect::word).collect(Collectors.joining(", "));
    }
  }

  /** Whether something has to be confirmed. */
  public enum State {
    /** It stands in the file. */
    READ("read"),
    /** It follows from the file as the trade writes such tables. */
    USUAL("usual"),
    /** A person said it. */
    STATED("stated"),
    /** It may be so; a person has to confirm it. */
    GUESSED("to confirm"),
    /** Nothing speaks for anything; a person has to say it. */
    OPEN("to say");

    private final String word;

    State(String word) {
      this.word = word;
    }

    /** The word that commands print. */
    public String word() {
      return word;
    }
  }

  /** Something that is only shown. */
  static Recognised shown(Aspect aspect, String where, String found, String why) {
    return new Recognised(aspect, where, found, why, State.READ, "", List.of());
  }

  /** Whether a person has to confirm, change or say it first. */
  public boolean isOpen() {
    return state == State.GUESSED || state == State.OPEN;
  }
}
