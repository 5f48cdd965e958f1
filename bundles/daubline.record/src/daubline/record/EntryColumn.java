package daubline.record;

import daubline.base.Finding;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * One column of a table.
 *
 * @param id a stable name: remembered widths, sheets on paper and tests use it
 * @param share its share of the width; 1 is usual
 * @param print what stands in the cell
 * @param edit the text with which typing begins
 * @param read understands a typed text; null when the column is only read. An empty text takes the value away.
 * @param choices the words that are offered; empty for free text
 * @param odd what is odd about a cell
 * @param asked whether Enter stops here for an object; null objects are rows not begun yet
 * @param isDate whether it holds dates, which are shown in the order a person is used to
 * @param <T> what a row shows
 */
public record EntryColumn<T>(String id, double share, Function<T, String> print, Function<T, String> edit, Function<String, Entry<T>> read,
    Function<T, List<String>> choices, Function<T, Optional<Finding>> odd, Predicate<T> asked,
    boolean isDate) {

  /** A column that is only read. */
  public static <T> EntryColumn<T> shown(String id, double share, Function<T, String> print) {
    return new EntryColumn<>(id, share, print, print, null, t -> List.of(), t -> Optional.empty(), t -> false, false);
  }

  /** A column that is typed. */
  public static <T> EntryColumn<T> typed(String id, double share, Function<T, String> print, Function<String, Entry<T>> read) {
    return new EntryColumn<>(id, share, print, print, read, t -> List.of(), t -> Optional.empty(), t -> true, false);
  }

  /** The same with words on offer. */
  public EntryColumn<T> offering(Function<T, List<String>> words) {
    return new EntryColumn<>(id, share, print, edit, read, words, odd, asked, isDate);
  }

  /** The same with another text to begin typing with. */
  public EntryColumn<T> editing(Function<T, String> text) {
    return new EntryColumn<>(id, share, print, text, read, choices, odd, asked, isDate);
  }

  /** The same with something that may be odd. */
  public EntryColumn<T> doubting(Function<T, Optional<Finding>> doubt) {
    return new EntryColumn<>(id, share, print, edit, read, choices, doubt, asked, isDate);
  }

  /** The same, at which Enter stops only for some objects. */
  public EntryColumn<T> askedWhen(Predicate<T> when) {
    return new EntryColumn<>(id, share, print, edit, read, choices, odd, when, isDate);
  }

  /** The same, understood otherwise. */
  public EntryColumn<T> reading(Function<String, Entry<T>> understood) {
    return new EntryColumn<>(id, share, print, edit, understood, choices, odd, asked, isDate);
  }

  /** The same as a column of dates. */
  public EntryColumn<T> dated() {
    return new EntryColumn<>(id, share, print, edit, read, choices, odd, asked, true);
  }

  /** Whether something can be typed. */
  public boolean isTyped() {
    return read != null;
  }
}
