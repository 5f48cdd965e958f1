package daubline.ui.sheet;

import daubline.base.Amount;
import daubline.base.Unit;
import daubline.base.ValueKind;
import daubline.base.Variable;
import daubline.model.Citation;
import daubline.model.Reading;
import daubline.session.Readings;
import daubline.ui.Words;
import daubline.ui.prefs.Preferred;

/** How values stand in the window. */
final class Shown {

  private Shown() {
  }

  /** A value as it was typed with its unit, or in the unit preferred for its quantity; missing ones in words. */
  static String amount(Reading reading, Variable variable) {
    Amount amount = Readings.amount(reading);
    if (amount.isMissing() || amount.kind().isYesNo()) {
      return Words.said(amount.kind().word());
    }
    if (amount.kind() == ValueKind.CATEGORY) {
      return Words.word(variable, text(reading.getTyped()).isEmpty() ? amount.category() : reading.getTyped());
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
    if (Readings.amount(reading).kind() == ValueKind.CATEGORY) {
      return amount(reading, variable);
    }
    if (reading.getTyped() != null) {
      return typed(reading).replace('\u00A0', ' ');
    }
    Amount amount = Readings.amount(reading);
    return amount.isMissing() || amount.kind().isYesNo() ? Words.said(amount.kind().word()) : Preferred.amount(amount, variable).replace('\u00A0', ' ');
  }

  /** Author, year and page, or who recorded it. */
  static String origin(Reading reading) {
    Citation citation = reading.getCitation();
    if (citation == null) {
      return reading.getBy() == null ? "" : text(reading.getBy().getName());
    }
    String who = text(citation.getAuthors()).isEmpty() ? text(citation.getTitle()) : text(citation.getAuthors());
    return (who + " " + text(citation.getYear())).strip() + (text(reading.getPage()).isBlank() ? "" : ", " + page(reading.getPage().strip()));
  }

  /** A bare number is a page; anything else, such as "fig. 9", says itself what it is. */
  private static String page(String place) {
    return Character.isDigit(place.charAt(0)) ? Words.of("page", place) : place;
  }

  /** A text, never null. */
  static String text(String text) {
    return text == null ? "" : text;
  }

  /** A word for missing, present or absent in the language of the window as the word that the study keeps. */
  static String plainWord(String text) {
    return Words.wording().kind(text).map(ValueKind::word).orElse(text);
  }

  /** The unit in which a column of one variable is shown. */
  static Unit unit(Variable variable) {
    return Preferred.unit(variable.quantity()).orElse(variable.unit());
  }
}
