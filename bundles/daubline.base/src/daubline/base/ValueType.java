package daubline.base;

/** What a variable's values are. */
public enum ValueType {
  /** A number with a unit. */
  NUMBER,
  /** A word of the variable's list. */
  CATEGORY,
  /** Present or absent. */
  YES_NO,
  /** Free text. */
  TEXT
}
