package daubline.engine.inference;

import daubline.base.DecimalSign;
import daubline.base.Numbers;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The values of a criterion's settings: the user's where there are some, otherwise the standard ones. Also keeps what was
 * read of a sheet under these settings, so that it is read once for many pairs; so not for several threads at once.
 */
public final class SettingValues {

  private final Map<String, String> texts = new LinkedHashMap<>();
  private final Map<String, Double> numbers = new LinkedHashMap<>();
  private final Map<String, List<String>> lists = new HashMap<>();
  private final Map<Object, Map<SheetData, Object>> read = new HashMap<>();

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
    return lists.computeIfAbsent(key, k -> Arrays.stream(text(k).split(";")).map(String::strip).filter(s -> !s.isEmpty()).distinct().toList());
  }

  /**
   * What a reader makes of a sheet under these settings; read once.
   *
   * @param what what is read, such as the side of the comparison
   */
  @SuppressWarnings("unchecked")
  public <T> T once(Object what, SheetData sheet, Function<SheetData, T> reader) {
    Map<SheetData, Object> known = read.computeIfAbsent(what, w -> new IdentityHashMap<>());
    Object value = known.get(sheet);
    if (value == null) {
      value = reader.apply(sheet);
      known.put(sheet, value);
    }
    return (T) value;
  }

  /** Forgets what was read of a sheet. */
  void forget(SheetData sheet) {
    read.values().forEach(known -> known.remove(sheet));
  }

  private static <T> T required(Map<String, T> values, String key) {
    T value = values.get(key);
    if (value == null) {
      throw new IllegalArgumentException("The criterion declares no setting " + key);
    }
    return value;
  }
}
