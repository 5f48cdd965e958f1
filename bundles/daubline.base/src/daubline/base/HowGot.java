package daubline.base;

/** How a value was got. */
public enum HowGot {
  /** On a scale. */
  WEIGHED("weighed"),
  /** With an instrument or a rule. */
  MEASURED("measured"),
  /** By counting, with a unit mass or volume. */
  COUNTED("counted"),
  /** From other values by a stated formula. */
  CALCULATED("calculated"),
  /** By eye or experience. */
  ESTIMATED("estimated"),
  /** From a publication. */
  READ_FROM_REPORT("read from report"),
  /** The source does not say. */
  NOT_STATED("not stated");

  private final String word;

  HowGot(String word) {
    this.word = word;
  }

  /** The word that tables and screens print. */
  public String word() {
    return word;
  }
}
