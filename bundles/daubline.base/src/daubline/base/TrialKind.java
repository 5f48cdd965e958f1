package daubline.base;

/** What a trial is for; a demonstration stays out of comparison unless asked in. */
public enum TrialKind {
  /** To learn whether it works at all. */
  PILOT("pilot"),
  /** To test a stated question. */
  EXPERIMENT("experiment"),
  /** The same recipe once more. */
  REPEAT("repeat"),
  /** For spectators. */
  DEMONSTRATION("demonstration");

  private final String word;

  TrialKind(String word) {
    this.word = word;
  }

  /** The word that tables and screens print. */
  public String word() {
    return word;
  }
}
