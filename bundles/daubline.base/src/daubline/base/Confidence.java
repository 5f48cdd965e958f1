package daubline.base;

/** How sure the reader is of a reading. */
public enum Confidence {
  /** Printed clearly and of one meaning. */
  HIGH("high"),
  /** Some interpretation was needed. */
  MEDIUM("medium"),
  /** Doubtful reading or source. */
  LOW("low");

  private final String word;

  Confidence(String word) {
    this.word = word;
  }

  /** The word that tables and screens print. */
  public String word() {
    return word;
  }
}
