package daubline.engine.inference;

/** What one criterion says of a trial and a sheet. An experiment never proves; no word here says so. */
public enum Verdict {
  /** The difference is within what measuring, erosion and the scatter of smelts explain. */
  CONSISTENT("consistent"),
  /** The difference is larger than that. */
  NOT_CONSISTENT("not consistent"),
  /** Evidence or trial says nothing about it; the reason is given. */
  NOT_TESTED("not tested");

  private final String word;

  Verdict(String word) {
    this.word = word;
  }

  /** The word that tables and screens print. */
  public String word() {
    return word;
  }
}
