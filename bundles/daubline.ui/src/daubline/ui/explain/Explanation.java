package daubline.ui.explain;

import java.util.List;
import java.util.stream.Stream;

/**
 * What is to be known about one thing that a screen shows.
 *
 * @param term what it is called
 * @param lines what is to be known, one matter a line
 */
public record Explanation(String term, List<Line> lines) {

  /**
   * One matter.
   *
   * @param label what the line is about, such as the unit; empty for the definition itself
   * @param text what is to be known
   */
  public record Line(String label, String text) {
  }

  /** The lines that say something. */
  public Explanation {
    lines = lines.stream().filter(l -> !l.text().isBlank()).toList();
  }

  /** A term with its definition alone. */
  static Explanation of(String term, String definition) {
    return new Explanation(term, List.of(new Line("", definition)));
  }

  /** Whether anything is said. */
  public boolean isTelling() {
    return !lines.isEmpty();
  }

  /** All of it as plain text, as it is read out and copied. */
  public String text() {
    return String.join("\n", Stream.concat(Stream.of(term), lines.stream().map(l -> l.label().isEmpty() ? l.text() : l.label() + ": " + l.text())).toList());
  }
}
