package daubline.analysis;

import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.base.Numbers;
import daubline.criteria.Criteria;
import daubline.engine.inference.ComparisonSettings;
import daubline.engine.inference.Group;
import daubline.engine.inference.Weights;
import daubline.model.Setting;
import daubline.model.Study;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The comparison settings that a study keeps. Keys: {@code comparison.alpha}, {@code comparison.firmness},
 * {@code weight.group.geometry}, {@code weight.base_internal_diameter} and
 * {@code criterion.base_internal_diameter.tolerance}; numbers in canonical units with a point.
 */
public final class StudySettings {

  static final String ALPHA = "comparison.alpha";
  static final String FIRMNESS = "comparison.firmness";
  static final String GROUP = "weight.group.";
  static final String WEIGHT = "weight.";
  static final String CRITERION = "criterion.";

  private StudySettings() {
  }

  /** The settings of a study; standard where it sets nothing, or nothing that can be read. */
  public static ComparisonSettings of(Study study) {
    Map<Group, Double> groups = new EnumMap<>(Group.class);
    Map<String, Double> weights = new HashMap<>();
    Map<String, Map<String, String>> criteria = new LinkedHashMap<>();
    Map<String, String> sources = new HashMap<>();
    for (Setting setting : study.getSettings()) {
      String key = text(setting.getKey());
      String value = text(setting.getValue());
      if (key.startsWith(GROUP)) {
        group(key).ifPresent(g -> number(value).ifPresent(weight -> groups.put(g, weight)));
      } else if (key.startsWith(WEIGHT)) {
        number(value).ifPresent(weight -> weights.put(key.substring(WEIGHT.length()), weight));
      } else if (isOfCriterion(key)) {
        int dot = key.indexOf('.', CRITERION.length());
        criteria.computeIfAbsent(key.substring(CRITERION.length(), dot), c -> new LinkedHashMap<>()).put(key.substring(dot + 1), value);
        if (!text(setting.getSource()).isBlank()) {
          sources.put(key.substring(CRITERION.length()), setting.getSource().strip());
        }
      }
    }
    ComparisonSettings standard = ComparisonSettings.standard();
    return standard.with(new Weights(groups, weights)).withMore(criteria, sources).with(
        value(study, ALPHA).filter(StudySettings::isAlpha).orElse(standard.alpha()), value(study, FIRMNESS).orElse(standard.firmness()));
  }

  /** What is wrong with the settings that a study keeps, in the words of the user; what is wrong is not used. */
  public static List<Finding> check(Study study) {
    List<Finding> findings = new ArrayList<>();
    for (Setting setting : study.getSettings()) {
      String key = text(setting.getKey());
      boolean number = key.startsWith(WEIGHT) || key.equals(ALPHA) || key.equals(FIRMNESS);
      boolean bad = number && (number(text(setting.getValue())).isEmpty() || key.equals(ALPHA) && !isAlpha(number(setting.getValue()).get()));
      if (bad) {
        findings.add(Finding.error("setting.number", "Comparison settings", "“" + text(setting.getValue()) + "” of " + key
            + (key.equals(ALPHA) ? " does not lie between 0 and 0.5" : " is not a number of zero or more"), "correct it; the standard value is used until then"));
      } else if (key.startsWith(GROUP) && group(key).isEmpty()) {
        findings.add(Finding.warning("setting.unknown", "Comparison settings", "there is no group “" + key.substring(GROUP.length()) + "”",
            "use one of geometry, fire, residues, chemistry, fuel and products"));
      }
    }
    if (findings.isEmpty()) {
      findings.addAll(of(study).check(Criteria.all()));
    }
    return findings;
  }

  private static boolean isOfCriterion(String key) {
    return key.startsWith(CRITERION) && key.indexOf('.', CRITERION.length()) > 0;
  }

  private static boolean isAlpha(double value) {
    return value > 0 && value < 0.5;
  }

  private static Optional<Double> value(Study study, String key) {
    return study.getSettings().stream().filter(s -> key.equals(s.getKey())).findFirst().flatMap(s -> number(text(s.getValue())));
  }

  private static Optional<Group> group(String key) {
    String name = key.substring(GROUP.length()).toUpperCase(Locale.ROOT);
    return Arrays.stream(Group.values()).filter(g -> g.name().equals(name)).findFirst();
  }

  private static Optional<Double> number(String text) {
    return Numbers.parse(text, DecimalSign.POINT).filter(n -> n >= 0);
  }

  private static String text(String text) {
    return text == null ? "" : text;
  }
}
