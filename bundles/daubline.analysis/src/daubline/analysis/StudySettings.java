package daubline.analysis;

import daubline.base.DecimalSign;
import daubline.base.Numbers;
import daubline.engine.inference.ComparisonSettings;
import daubline.engine.inference.Group;
import daubline.engine.inference.Weights;
import daubline.model.Setting;
import daubline.model.Study;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * The comparison settings that a study keeps. Keys: {@code weight.group.geometry}, {@code weight.base_internal_diameter}
 * and {@code criterion.base_internal_diameter.tolerance}; numbers in canonical units with a point.
 */
public final class StudySettings {

  private static final String GROUP = "weight.group.";
  private static final String WEIGHT = "weight.";
  private static final String CRITERION = "criterion.";

  private StudySettings() {
  }

  /** The settings of a study; standard where it sets nothing. */
  public static ComparisonSettings of(Study study) {
    Map<Group, Double> groups = new EnumMap<>(Group.class);
    Map<String, Double> weights = new HashMap<>();
    Map<String, Map<String, String>> criteria = new LinkedHashMap<>();
    for (Setting setting : study.getSettings()) {
      String key = setting.getKey() == null ? "" : setting.getKey();
      String value = setting.getValue() == null ? "" : setting.getValue();
      if (key.startsWith(GROUP)) {
        putGroup(groups, key.substring(GROUP.length()), value);
      } else if (key.startsWith(WEIGHT)) {
        number(value).ifPresent(weight -> weights.put(key.substring(WEIGHT.length()), weight));
      } else if (key.startsWith(CRITERION) && key.indexOf('.', CRITERION.length()) > 0) {
        int dot = key.indexOf('.', CRITERION.length());
        criteria.computeIfAbsent(key.substring(CRITERION.length(), dot), c -> new LinkedHashMap<>()).put(key.substring(dot + 1), value);
      }
    }
    return ComparisonSettings.standard().with(new Weights(groups, weights)).with(criteria);
  }

  private static void putGroup(Map<Group, Double> groups, String name, String value) {
    for (Group group : Group.values()) {
      if (group.name().equals(name.toUpperCase(Locale.ROOT))) {
        number(value).ifPresent(weight -> groups.put(group, weight));
      }
    }
  }

  private static java.util.Optional<Double> number(String text) {
    return Numbers.parse(text, DecimalSign.POINT).filter(n -> n >= 0);
  }
}
