package daubline.analysis.record;

import daubline.base.Amount;
import daubline.base.Material;
import daubline.engine.inference.Statement;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * One line of a run log.
 *
 * @param at wall time as ISO 8601 with offset, or empty
 * @param elapsed seconds since first light, NaN when not stated
 * @param kind what kind of entry
 * @param text what was written
 * @param about whether the time is approximate
 * @param late whether it was written later
 * @param inferred whether it was concluded, not seen
 * @param charged what was put in; empty for other entries
 * @param values measured values by variable id
 * @param duration seconds that an incident lasted, NaN when not stated or no incident
 * @param effect what an incident does to comparability; empty otherwise
 * @param incident whether it is an incident
 */
public record LogData(String id, String at, double elapsed, String kind, String text, boolean about, boolean late, boolean inferred,
    List<Charged> charged, Map<String, List<Statement>> values, double duration, String effect, boolean incident) {

  /** One material of a charge: its mass in kilograms, and the name of its lot. */
  public record Charged(Material material, Amount mass, String lot) {
  }

  private static final int ANY_CASE = Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS;
  private static final String HARM = "(injur|hurt|unwell|first.?aid|hospital|fainted|wounded|verletz|erste.?hilfe)";
  private static final Pattern HEALTH = Pattern.compile("\\b" + HARM, ANY_CASE);
  /** “Nobody was hurt” tells of nobody's health. */
  private static final Pattern NO_HARM = Pattern.compile("\\b(nobody|no.?one|none|not|no|without|niemand|keiner?|ohne)\\b(\\W+\\w+){0,2}\\W+" + HARM + "\\w*", ANY_CASE);

  /**
   * Whether a line concerns the health of a person, by the words in it; such lines are recorded without blame and stay out of
   * everything that is published.
   */
  public static boolean concernsHealth(String kind, String text) {
    return HEALTH.matcher(kind).find() || HEALTH.matcher(NO_HARM.matcher(text).replaceAll("")).find();
  }

  /** Whether this line may be published. */
  public boolean isPublic() {
    return !concernsHealth(kind, text);
  }

  public LogData {
    charged = List.copyOf(charged);
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }
}
