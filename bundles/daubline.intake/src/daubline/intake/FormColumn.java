package daubline.intake;

import daubline.base.Quantity;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.ValueType;
import daubline.base.Variable;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One column of a form.
 *
 * @param id the heading, without unit
 * @param content what its cells hold
 * @param required whether a row without it is refused
 * @param words the words that may stand in it; empty when any text may
 * @param meaning what belongs into it
 * @param example what a cell may look like
 * @param variable what a value is of; null for other contents, and where another column names the variable
 */
public record FormColumn(String id, Content content, boolean required, List<String> words, String meaning, String example,
    Variable variable) {

  /** What the cells of a column hold. */
  public enum Content {
    /** Any text. */
    TEXT,
    /** One of the words. */
    WORD,
    /** Several names, parted by semicolons. */
    NAMES,
    /** A whole number. */
    WHOLE,
    /** A number without unit. */
    NUMBER,
    /** Yes or no. */
    YES_NO,
    /** A date. */
    DATE,
    /** A time of day or a date with time. */
    TIME,
    /** A value with unit: number, ±, range, limit, word, or why there is none. */
    VALUE
  }

  /** A column of plain content. */
  static FormColumn of(String id, Content content, String meaning, String example) {
    return new FormColumn(id, content, false, List.of(), meaning, example, null);
  }

  /** A column of text. */
  static FormColumn text(String id, String meaning, String example) {
    return of(id, Content.TEXT, meaning, example);
  }

  /** A column of words from a list. */
  static FormColumn word(String id, List<String> words, String meaning) {
    return new FormColumn(id, Content.WORD, false, words, meaning, words.get(0), null);
  }

  /** A column of values of a variable. */
  static FormColumn value(String id, Variable variable, String meaning) {
    String example = switch (variable.type()) {
      case NUMBER -> "12.5";
      case YES_NO -> "present";
      case CATEGORY -> variable.words().isEmpty() ? "" : variable.words().get(0);
      case TEXT -> "free text";
    };
    return new FormColumn(id, Content.VALUE, false, variable.words(), meaning, example, variable);
  }

  /** A column of values that are no variable of the catalogue: a mass, a share. */
  static FormColumn plain(String id, Quantity quantity, String unit, double low, double high, String meaning, String example) {
    Unit usual = Units.find(quantity, unit).orElseThrow();
    Variable variable = new Variable(id, id, "", ValueType.NUMBER, quantity, usual, low, high, Set.of(), List.of(), false,
        "", meaning, "");
    return new FormColumn(id, Content.VALUE, false, List.of(), meaning, example, variable);
  }

  /** The same, required. */
  FormColumn must() {
    return new FormColumn(id, content, true, words, meaning, example, variable);
  }

  /** The unit in which a template asks for it; empty when it has none. */
  public Optional<Unit> unit() {
    return variable == null || variable.type() != ValueType.NUMBER ? Optional.empty() : Optional.of(variable.unit());
  }

  /** The heading with the usual unit, as a template writes it. */
  public String heading() {
    return unit().filter(u -> !u.symbol().isEmpty()).map(u -> id + " [" + u.symbol() + "]").orElse(id);
  }

  /** Whether its texts are meant as numbers, so that they tell the decimal sign of the file. */
  boolean holdsNumbers() {
    return switch (content) {
      case NUMBER -> true;
      case VALUE -> variable == null || variable.type() == ValueType.NUMBER;
      default -> false;
    };
  }
}
