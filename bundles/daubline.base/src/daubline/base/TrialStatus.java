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

  /** A status, or planned where none was chosen yet. */
  public static TrialStatus of(TrialStatus chosen) {
    return chosen == null ? PLANNED : chosen;
  }

  /** Whether it was lit and is over, to the end or not. */
  public boolean isBurnt() {
    return this == FIRED || this == RECORDED || this == FAILED;
  }

  /** Whether it is still to be lit. */
  public boolean isToCome() {
    return this == PLANNED || this == READY;
  }

  /** The word that tables and screens print. */
  public String word() {
    return word;
  }
}
