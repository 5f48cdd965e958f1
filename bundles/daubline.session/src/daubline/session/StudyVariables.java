package daubline.session;

import daubline.base.Quantity;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.ValueType;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.model.Setting;
import daubline.model.Study;
import daubline.model.VariableDefinition;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** The variables of a study: the catalogue and what the study adds to it. */
public final class StudyVariables {

  private StudyVariables() {
  }

  /** Before the id of a variable, the key of a setting that holds the study's own words for it, with semicolons. */
  public static final String WORDS = "words.";

  /** The catalogue with the study's own variables after it and the study's own words in its pick-lists. */
  public static Variables of(Study study) {
    Variables all = study.getVariables().isEmpty() ? Variables.standard()
        : Variables.standard().with(study.getVariables().stream().map(StudyVariables::variable).toList());
    for (Setting setting : study.getSettings()) {
      if (setting.getKey() != null && setting.getKey().startsWith(WORDS) && !list(setting.getValue()).isEmpty()) {
        all = all.worded(setting.getKey().substring(WORDS.length()), list(setting.getValue()).stream().filter(w -> !w.isEmpty()).distinct().toList());
      }
    }
    return all;
  }

  private static Variable variable(VariableDefinition v) {
    Quantity quantity = parse(Quantity.class, v.getQuantity(), Quantity.NUMBER);
    Unit unit = Units.find(quantity, text(v.getUnit())).orElseGet(() -> Units.canonical(quantity));
    Set<Variable.Place> places = list(v.getStages()).stream().map(p -> parse(Variable.Place.class, p, Variable.Place.REMAINS))
        .collect(Collectors.toSet());
    // a range that is upside down bounds nothing until it is mended; the checks say so
    boolean bounded = v.getLow() == null || v.getHigh() == null || v.getLow() <= v.getHigh();
    double low = bounded ? number(v.getLow()) : Double.NaN;
    double high = bounded ? number(v.getHigh()) : Double.NaN;
    return new Variable(String.valueOf(v.getId()), text(v.getName()), text(v.getGroup()), parse(ValueType.class, v.getType(), ValueType.TEXT),
        quantity, unit, low, high, places, list(v.getCategories()), false,
        text(v.getEvidencedBy()), text(v.getMeaning()), text(v.getSource()));
  }

  private static <E extends Enum<E>> E parse(Class<E> type, String name, E otherwise) {
    String wanted = text(name).strip().toUpperCase(Locale.ROOT).replace(' ', '_');
    return Arrays.stream(type.getEnumConstants()).filter(e -> e.name().equals(wanted)).findFirst().orElse(otherwise);
  }

  private static List<String> list(String text) {
    return text == null || text.isBlank() ? List.of() : Arrays.stream(text.split(";")).map(String::strip).toList();
  }

  private static String text(String text) {
    return text == null ? "" : text;
  }

  private static double number(Double value) {
    return value == null ? Double.NaN : value;
  }
}
