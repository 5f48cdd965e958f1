package daubline.base;

/** Where a trial stands. */
public enum TrialStatus {
  /** On paper. */
  PLANNED("planned"),
  /** Built, dried, permitted. */
  READY("ready"),
  /** Burnt, remains not yet recorded. */
  FIRED("fired"),
  /** Burnt and recorded. */
  RECORDED("recorded"),
  /** Burnt, stopped by a fault; it counts and is published. */
  FAILED("failed"),
  /** Never lit. */
  ABANDONED("abandoned");

  private final String word;

  TrialStatus(String word) {
    this.word = word;
  }

  /** The word that tables and screens print. */
  public String word() {
    return word;
  }
}
