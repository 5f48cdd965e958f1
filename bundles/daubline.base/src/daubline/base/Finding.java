package daubline.base;

import java.util.Objects;

/**
 * One thing found by a check or an import.
 *
 * @param severity how much it matters
 * @param code a stable short name of the kind of finding, such as {@code number.ambiguous}
 * @param where where it is, in the user's words: file, sheet, row and column, or trial and field
 * @param what what is wrong, with the text found
 * @param remedy how to mend it
 * @param subject the id of the model object concerned, or empty
 * @param variable the id of the variable concerned, or empty
 */
public record Finding(Severity severity, String code, String where, String what, String remedy, String subject,
    String variable) {

  public Finding {
    Objects.requireNonNull(severity);
    for (String s : new String[] {code, where, what, remedy, subject, variable}) {
      Objects.requireNonNull(s);
    }
  }

  /** A finding that stops an import or a calculation. */
  public static Finding error(String code, String where, String what, String remedy) {
    return new Finding(Severity.ERROR, code, where, what, remedy, "", "");
  }

  /** A finding that is shown and stops nothing. */
  public static Finding warning(String code, String where, String what, String remedy) {
    return new Finding(Severity.WARNING, code, where, what, remedy, "", "");
  }

  /** A finding worth knowing. */
  public static Finding note(String code, String where, String what, String remedy) {
    return new Finding(Severity.NOTE, code, where, what, remedy, "", "");
  }

  /** The same finding placed elsewhere, for a caller that knows the row or the field. */
  public Finding at(String place) {
    return new Finding(severity, code, place, what, remedy, subject, variable);
  }

  /** The same finding about one model object and variable, so that a screen can go there. */
  public Finding about(String subjectId, String variableId) {
    return new Finding(severity, code, where, what, remedy, subjectId, variableId);
  }

  /** Whether it stops an import or a calculation. */
  public boolean isError() {
    return severity == Severity.ERROR;
  }

  /** One line: severity, place, what and remedy. */
  @Override
  public String toString() {
    return severity.name().toLowerCase(java.util.Locale.ROOT) + ": " + where + ": " + what
        + (remedy.isEmpty() ? "" : " – " + remedy);
  }
}
