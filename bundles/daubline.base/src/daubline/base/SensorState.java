package daubline.base;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What a sensor says, or is said of it, in place of a number: data of its own, never a number. */
public enum SensorState {
  /** The wire is broken or the sensor not plugged in. */
  OPEN("open", "open circuit", "disconnected", "no sensor"),
  /** The true value is beyond what the instrument can show. */
  SATURATED("saturated", "overload", "over", "overrange", "ol", "o.l", "ovld", "+over", "-over", "o/l"),
  /** It was taken out. */
  REMOVED("removed", "pulled", "taken out"),
  /** It reported a fault. */
  FAULT("fault", "error", "err", "nan", "fail", "#n/a", "invalid");

  private final String word;
  private final Set<String> spellings;

  SensorState(String word, String... spellings) {
    this.word = word;
    this.spellings = Set.of(spellings);
  }

  /** The word that tables and charts print. */
  public String word() {
    return word;
  }

  /** The state of a text; empty when it names none. */
  public static Optional<SensorState> find(String text) {
    String t = text.strip().toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(s -> s.word.equals(t) || s.spellings.contains(t)).findFirst();
  }
}
