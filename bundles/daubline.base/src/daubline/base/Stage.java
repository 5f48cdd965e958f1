package daubline.base;

/** The four states of one variable of a trial; only as found is compared with evidence. */
public enum Stage {
  /** What the plan says. */
  PLANNED("planned"),
  /** What was measured before the fire. */
  AS_BUILT("as built"),
  /** What held during the fire. */
  AS_FIRED("as fired"),
  /** What was recorded of the remains, as though excavated. */
  AS_FOUND("as found");

  private final String word;

  Stage(String word) {
    this.word = word;
  }

  /** The word that tables and screens print. */
  public String word() {
    return word;
  }
}
