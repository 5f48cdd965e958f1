package daubline.base;

/**
 * What kind of statement a value makes. A missing value says why it is missing; none of them is zero.
 */
public enum ValueKind {
  /** A number without a stated uncertainty. */
  EXACT("exact", Shape.NUMBER),
  /** A number with one standard uncertainty. */
  PLUS_MINUS("±", Shape.NUMBER),
  /** Between a lower and an upper bound. */
  RANGE("range", Shape.NUMBER),
  /** The true value is this or more (a truncated height, a partial recovery). */
  AT_LEAST("at least", Shape.NUMBER),
  /** The true value is this or less. */
  AT_MOST("at most", Shape.NUMBER),
  /** One word or a few words with probabilities, from the variable's list. */
  CATEGORY("category", Shape.WORD),
  /** Free text. */
  TEXT("text", Shape.WORD),
  /** Searched for and found. */
  PRESENT("present", Shape.YES_NO),
  /** Searched for and not found. */
  ABSENT("absent", Shape.YES_NO),
  /** Below the limit of detection; the limit is known. */
  BELOW_LIMIT("below limit", Shape.NUMBER),
  /** Seen but not measured ("tr."). */
  TRACE("trace", Shape.MISSING),
  /** Nobody could have recovered it. */
  NOT_PRESERVED("not preserved", Shape.MISSING),
  /** Nobody searched for it. */
  NOT_LOOKED_FOR("not looked for", Shape.MISSING),
  /** It may have been there; nothing was written down. */
  NOT_RECORDED("not recorded", Shape.MISSING),
  /** It was there and was not put on a scale. */
  NOT_WEIGHED("not weighed", Shape.MISSING),
  /** The laboratory did not analyse for it. */
  NOT_ANALYSED("n.a.", Shape.MISSING),
  /** The laboratory looked and did not detect it; the limit is not known. */
  NOT_DETECTED("n.d.", Shape.MISSING),
  /** The laboratory found less than a limit of detection that it does not state in the row. */
  BELOW_DETECTION("bdl", Shape.MISSING);

  private enum Shape { NUMBER, WORD, YES_NO, MISSING }

  private final String word;
  private final Shape shape;

  ValueKind(String word, Shape shape) {
    this.word = word;
    this.shape = shape;
  }

  /** The word that tables and screens print. */
  public String word() {
    return word;
  }

  /** Whether a number belongs to it. */
  public boolean isNumber() {
    return shape == Shape.NUMBER;
  }

  /** Whether its number may be reckoned with as the value itself; a bound, such as "at least" or "below limit", may not. */
  public boolean isEstimate() {
    return this == EXACT || this == PLUS_MINUS || this == RANGE;
  }

  /** Whether it says that nothing is known, and why. */
  public boolean isMissing() {
    return shape == Shape.MISSING;
  }

  /** Whether it says present or absent. */
  public boolean isYesNo() {
    return shape == Shape.YES_NO;
  }
}
