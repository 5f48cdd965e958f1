package daubline.ui.compare;

import daubline.ui.Words;
import java.util.List;
import java.util.stream.Stream;

/**
 * The heading of a column.
 *
 * @param key the key under which stands what the column holds
 * @param text how it is written
 */
record Heading(String key, String text) {

  /** Headings that are written as their keys say. */
  static List<Heading> of(String... keys) {
    return Stream.of(keys).map(k -> new Heading(k, Words.of(k))).toList();
  }
}
