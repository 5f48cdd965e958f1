package daubline.export;

import java.util.Objects;

/**
 * One column of a table.
 *
 * @param id a stable short name, unique in the table: lower case with underscores
 * @param heading the heading without unit
 * @param unit the symbol of the unit, printed once in the heading; empty when there is none
 * @param kind what its cells hold
 */
public record Column(String id, String heading, String unit, Kind kind) {

  /** What the cells of a column hold. */
  public enum Kind {
    /** What a person wrote, or other text, left-aligned; it stays as it is in every language. */
    TEXT,
    /** Words of the tool and of its catalogues, left-aligned; a publication tells them in its language. */
    WORDS,
    /** Numbers, aligned on the decimal sign. */
    NUMBER
  }

  public Column {
    Objects.requireNonNull(id);
    Objects.requireNonNull(kind);
  }

  /** A column of words. */
  public static Column text(String id, String heading) {
    return new Column(id, heading, "", Kind.TEXT);
  }

  /** A column of the tool's own words, such as verdicts and names of variables. */
  public static Column words(String id, String heading) {
    return new Column(id, heading, "", Kind.WORDS);
  }

  /** A column of numbers in a unit. */
  public static Column number(String id, String heading, String unit) {
    return new Column(id, heading, unit, Kind.NUMBER);
  }

  /** Heading and unit, such as "Mass (kg)". */
  public String fullHeading() {
    return unit.isEmpty() ? heading : heading + " (" + unit + ")";
  }
}
