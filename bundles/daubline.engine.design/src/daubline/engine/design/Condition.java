package daubline.engine.design;

import daubline.base.Printed;

/**
 * One part of a rule: a factor at, above or below a setting.
 *
 * @param factor the id of the factor
 * @param relation how it must lie to the setting
 * @param setting the setting in the factor's unit; unused for a category
 * @param category the category; empty for a measured factor
 */
public record Condition(String factor, Relation relation, double setting, String category) {

  /** How a factor lies to a setting. */
  public enum Relation {
    /** At the setting or above. */
    AT_LEAST("at least"),
    /** At the setting or below. */
    AT_MOST("at most"),
    /** Is this category, or this very setting. */
    IS("is"),
    /** Is any other. */
    IS_NOT("is not");

    private final String word;

    Relation(String word) {
      this.word = word;
    }

    /** In words. */
    public String word() {
      return word;
    }
  }

  /** A measured factor at or above a setting. */
  public static Condition atLeast(String factor, double setting) {
    return new Condition(factor, Relation.AT_LEAST, setting, "");
  }

  /** A measured factor at or below a setting. */
  public static Condition atMost(String factor, double setting) {
    return new Condition(factor, Relation.AT_MOST, setting, "");
  }

  /** A factor of categories in one of them. */
  public static Condition is(String factor, String category) {
    return new Condition(factor, Relation.IS, 0, category);
  }

  boolean holds(Factor of, double code) {
    double other = of.isCategory() ? of.code(category) : of.code(setting);
    // a setting typed in the factor's unit and coded again may differ in the last digits
    return switch (relation) {
      case AT_LEAST -> code >= other - 1e-9;
      case AT_MOST -> code <= other + 1e-9;
      case IS -> Math.abs(code - other) < 1e-9;
      case IS_NOT -> Math.abs(code - other) >= 1e-9;
    };
  }

  String text(Factor of) {
    String what = of.isCategory() ? category : Printed.number(setting) + (of.unit().isEmpty() ? "" : " " + of.unit());
    return of.name() + " " + relation.word() + " " + what;
  }
}
