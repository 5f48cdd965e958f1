package daubline.engine.inference;

import daubline.base.DecimalSign;
import daubline.base.Numbers;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The values of a criterion's settings: the user's where there are some, otherwise the standard ones. */
public final class SettingValues {

  private final Map<String, String> texts = new LinkedHashMap<>();
  private final Map<String, Double> numbers = new LinkedHashMap<>();

  private SettingValues(List<Setting> settings, Map<String, String> chosen) {
    for (Setting setting : settings) {
      String value = chosen.getOrDefault(setting.key(), setting.standard());
      texts.put(setting.key(), value);
      if (setting.isNumber()) {
        numbers.put(setting.key(), parse(value).orElseThrow(() -> new IllegalArgumentException(
            "The setting “" + setting.name() + "” must be a number of zero or more, not “" + value + "”")));
      }
    }
  }

  /** The standard values of a criterion. */
  public static SettingValues standard(Criterion criterion) {
    return of(criterion, Map.of());
  }

  /**
   * The values of a criterion.
   *
   * @param chosen the user's values by key, numbers in canonical units with a point as decimal sign
   * @throws IllegalArgumentException when a number cannot be read or is negative
   */
  public static SettingValues of(Criterion criterion, Map<String, String> chosen) {
    return new SettingValues(criterion.settings(), chosen);
  }

  /** Reads a number of zero or more. */
  static Optional<Double> parse(String value) {
    return Numbers.parse(value, DecimalSign.POINT).filter(v -> v >= 0);
  }

  /** A number in canonical units. */
  public double number(String key) {
    return required(numbers, key);
  }

  /** A text. */
  public String text(String key) {
    return required(texts, key);
  }

  /** The parts of a text separated by semicolons. */
  public List<String> list(String key) {
    return Arrays.stream(text(key).split(";")).map(String::strip).filter(s -> !s.isEmpty()).toList();
  }

  private static <T> T required(Map<String, T> values, String key) {
    T value = values.get(key);
    if (value == null) {
      throw new IllegalArgumentException("The criterion declares no setting " + key);
    }
    return value;
  }
}
