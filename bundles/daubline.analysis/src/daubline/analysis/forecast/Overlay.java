package daubline.analysis.forecast;

import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.model.ModelFactory;
import daubline.model.StagedValue;
import daubline.session.Readings;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Values to try instead of those of the study, by variable id; the study is not changed.
 *
 * @param values readings that stand before all others
 */
public record Overlay(Map<String, StagedValue> values) {

  private static final Pattern NUMBER_AND_UNIT = Pattern.compile("([-+0-9.eE±–\\s]+)(.*)");

  /** Nothing replaced. */
  public static final Overlay NONE = new Overlay(Map.of());

  /** The same with one more value. */
  public Overlay with(String variable, StagedValue value) {
    Map<String, StagedValue> all = new LinkedHashMap<>(values);
    all.put(variable, value);
    return new Overlay(all);
  }

  /**
   * A value as somebody types it.
   *
   * @param typed number, uncertainty and unit, such as “500 L/min”
   * @throws IllegalArgumentException when there is no such variable or the text is no value of it
   */
  public static StagedValue value(Variables variables, String variable, String typed) {
    Variable known = variables.find(variable)
        .orElseThrow(() -> new IllegalArgumentException("there is no variable " + variable + "; the command variables lists them"));
    StagedValue value = ModelFactory.eINSTANCE.createStagedValue();
    Matcher parts = NUMBER_AND_UNIT.matcher(typed.strip());
    String unit = parts.matches() && !parts.group(2).isEmpty() ? parts.group(2) : known.unit().symbol();
    Optional<Finding> wrong = Readings.put(value, known, parts.matches() ? parts.group(1).strip() : typed.strip(), unit, DecimalSign.POINT);
    if (wrong.isPresent() || !Readings.amount(value).isNumber()) {
      throw new IllegalArgumentException(variable + " cannot be “" + typed + "”" + wrong.map(f -> ": " + f.what() + " – " + f.remedy()).orElse(""));
    }
    return value;
  }
}
