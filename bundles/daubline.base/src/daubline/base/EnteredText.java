package daubline.base;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A value and its unit as typed into one field, such as "25.5 cm", taken apart.
 *
 * @param value the part before the unit
 * @param unit the unit as typed; empty when there is none
 */
public record EnteredText(String value, String unit) {

  /** Takes the unit off the end of a typed text, when it ends with a unit of this quantity. */
  public static EnteredText split(String text, Quantity quantity) {
    String typed = text.strip().replace('\u00A0', ' ');
    Optional<String> unit = Units.of(quantity).stream().flatMap(u -> Stream.concat(Stream.of(u.symbol()), u.spellings().stream()))
        .filter(s -> isUnitAtEnd(typed, s)).max(Comparator.comparingInt(String::length));
    return unit.map(u -> new EnteredText(typed.substring(0, typed.length() - u.length()).strip(), u)).orElse(new EnteredText(typed, ""));
  }

  private static boolean isUnitAtEnd(String typed, String unit) {
    if (unit.isEmpty() || unit.matches("[-\\d].*") && !unit.contains("/") || typed.length() <= unit.length()) {
      return false;
    }
    String before = typed.substring(0, typed.length() - unit.length());
    char last = before.charAt(before.length() - 1);
    return typed.regionMatches(true, before.length(), unit, 0, unit.length()) && !Character.isLetter(last)
        && before.chars().anyMatch(Character::isDigit) && !(Character.isDigit(unit.charAt(0)) && last != ' ');
  }
}
