package daubline.record;

import daubline.base.Finding;
import java.util.function.Consumer;

/**
 * What became of a typed text: the change it makes, or what is wrong with it.
 *
 * @param change what to do to the object of the row; null when the text was not understood
 * @param complaint what is wrong and how to mend it; null when the text was understood
 * @param <T> what a row shows
 */
public record Entry<T>(Consumer<T> change, Finding complaint) {

  /** A text that was understood. */
  public static <T> Entry<T> of(Consumer<T> change) {
    return new Entry<>(change, null);
  }

  /** A text that was not. */
  public static <T> Entry<T> wrong(Finding complaint) {
    return new Entry<>(null, complaint);
  }

  /** A text that was not understood. */
  public static <T> Entry<T> wrong(String code, String what, String remedy) {
    return wrong(Finding.error(code, "", what, remedy));
  }

  /** Whether the text was understood. */
  public boolean isRead() {
    return change != null;
  }
}
