package daubline.intake;

import daubline.base.Quantity;
import daubline.base.Units;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The heading of a column, parted into name and unit: {@code wall_thickness [mm]}, {@code SiO2 (wt%)},
 * {@code Mass / kg}.
 *
 * @param text as it stands
 * @param name without the unit
 * @param unit the unit; empty when the heading names none
 */
public record Heading(String text, String name, String unit) {

  private static final Pattern BETWEEN_WORDS = Pattern.compile("[\\s_\\-.]+");
  private static final Pattern COLON = Pattern.compile("\\s*:\\s*");
  private static final Pattern BRACKETS = Pattern.compile("(.*?)\\s*\\[([^\\]]*)\\]");
  private static final Pattern PARENTHESES = Pattern.compile("(.*?)\\s*\\(([^)]*)\\)");
  private static final Pattern SLASH = Pattern.compile("(.*?)\\s+/\\s*(\\S+)");
  private static final Pattern COMMA = Pattern.compile("(.*?),\\s*(\\S+)");

  /** As laboratories write it: Cr ppm, SiO2_wt%, MnO Gew.-%. */
  private static final Pattern FORMULA_AND_UNIT = Pattern.compile("(.*)[ _]([^\\d\\s_]\\S*)");

  /** Parts a heading. Square brackets always hold a unit; other ways of writing it count when the unit is known. */
  public static Heading of(String text) {
    String t = text.strip().replaceAll("\\s+", " ");
    Matcher m = BRACKETS.matcher(t);
    if (m.matches()) {
      return new Heading(t, m.group(1), m.group(2).strip());
    }
    if (Formulas.ironBasis(t).isPresent()) {
      return new Heading(t, t, "");
    }
    for (Pattern way : new Pattern[] {PARENTHESES, SLASH, COMMA}) {
      m = way.matcher(t);
      if (m.matches() && !Units.named(m.group(2)).isEmpty()) {
        return new Heading(t, m.group(1), m.group(2).strip());
      }
    }
    m = FORMULA_AND_UNIT.matcher(t);
    if (m.matches() && Units.find(Quantity.FRACTION, m.group(2)).isPresent() && Formulas.symbol(m.group(1)).isPresent()) {
      return new Heading(t, m.group(1), m.group(2));
    }
    return new Heading(t, t, "");
  }

  /** The name in the writing in which names are compared: small letters, one space for anything between words. */
  public String key() {
    return key(name);
  }

  /** A text in the writing in which names are compared. */
  public static String key(String text) {
    String spaced = BETWEEN_WORDS.matcher(text.strip().toLowerCase(Locale.ROOT)).replaceAll(" ");
    return COLON.matcher(spaced).replaceAll(":").strip();
  }
}
