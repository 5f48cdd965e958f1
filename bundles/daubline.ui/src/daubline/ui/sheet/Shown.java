package daubline.ui.sheet;

import daubline.base.Amount;
import daubline.base.Quantity;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.ValueKind;
import daubline.base.Variable;
import daubline.model.Citation;
import daubline.model.Reading;
import daubline.session.Readings;
import daubline.ui.Words;
import daubline.ui.prefs.Preferred;
import java.util.Optional;

/** How values stand in the window. */
final class Shown {

  private Shown() {
  }

  /** A value as it was typed with its unit, or in the unit preferred for its quantity; missing ones in words. */
  static String amount(Reading reading, Variable variable) {
    Amount amount = Readings.amount(reading);
    if (amount.isMissing() || amount.kind().isYesNo()) {
      return Words.of(amount.kind());
    }
    boolean asTyped = Preferred.unit(variable.quantity()).isEmpty() && reading.getTyped() != null;
    return asTyped ? typed(reading) : Preferred.amount(amount, variable);
  }

  /** The text as typed with its unit. */
  static String typed(Reading reading) {
    return (text(reading.getTyped()) + (text(reading.getUnit()).isEmpty() ? "" : "\u00A0" + reading.getUnit())).strip();
  }

  /** The text with which editing a value begins. */
  static String editable(Reading reading, Variable variable) {
    if (reading.getTyped() != null) {
      return typed(reading).replace('\u00A0', ' ');
    }
    Amount amount = Readings.amount(reading);
    return amount.isMissing() || amount.kind().isYesNo() ? amount.kind().word() : Preferred.amount(amount, variable).replace('\u00A0', ' ');
  }

  /** Author, year and page, or who recorded it. */
  static String origin(Reading reading) {
    Citation citation = reading.getCitation();
    if (citation == null) {
      return reading.getBy() == null ? "" : text(reading.getBy().getName());
    }
    String who = text(citation.getAuthors()).isEmpty() ? text(citation.getTitle()) : text(citation.getAuthors());
    String page = text(reading.getPage()).isEmpty() ? "" : ", " + Words.of("page", reading.getPage());
    return (who + " " + text(citation.getYear())).strip() + page;
  }

  /** A text, never null. */
  static String text(String text) {
    return text == null ? "" : text;
  }

  /** A word for missing, present or absent in the language of the window as the word that the study keeps. */
  static String plainWord(String text) {
    return java.util.Arrays.stream(ValueKind.values()).filter(k -> k.isMissing() || k.isYesNo())
        .filter(k -> Words.of(k).equalsIgnoreCase(text.strip())).map(ValueKind::word).findFirst().orElse(text);
  }

  /**
   * A value and its unit in one text, such as "25.5 cm", taken apart.
   *
   * @param value the part before the unit
   * @param unit the unit as typed; empty when there is none
   */
  record Parts(String value, String unit) {
  }

  /** Takes the unit off the end of a typed text, when it ends with a unit of this quantity. */
  static Parts split(String text, Quantity quantity) {
    String typed = text.strip().replace('\u00A0', ' ');
    Optional<String> unit = Units.of(quantity).stream().flatMap(u -> java.util.stream.Stream.concat(java.util.stream.Stream.of(u.symbol()), u.spellings().stream()))
        .filter(s -> isUnitAtEnd(typed, s)).max(java.util.Comparator.comparingInt(String::length));
    return unit.map(u -> new Parts(typed.substring(0, typed.length() - u.length()).strip(), u)).orElse(new Parts(typed, ""));
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

  /** The unit in which a column of one variable is shown. */
  static Unit unit(Variable variable) {
    return Preferred.unit(variable.quantity()).orElse(variable.unit());
  }
}
