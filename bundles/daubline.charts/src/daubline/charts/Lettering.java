package daubline.charts;

import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/**
 * The language in which the thread letters a figure. Figures measure, break and draw text in many places; each of them asks here,
 * so that room is made for the words that are drawn.
 */
final class Lettering {

  private static final ThreadLocal<UnaryOperator<String>> NOW = new ThreadLocal<>();

  private Lettering() {
  }

  /** Does something while lettering is told in a wording; what was before comes back after it. */
  static <T> T in(UnaryOperator<String> wording, Supplier<T> work) {
    UnaryOperator<String> before = NOW.get();
    NOW.set(wording);
    try {
      return work.get();
    } finally {
      if (before == null) {
        NOW.remove();
      } else {
        NOW.set(before);
      }
    }
  }

  /** A text as it is drawn. */
  static String told(String english) {
    UnaryOperator<String> now = NOW.get();
    return now == null ? english : now.apply(english);
  }
}
