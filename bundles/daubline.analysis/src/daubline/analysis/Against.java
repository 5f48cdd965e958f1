package daubline.analysis;

/** What trials are compared with. */
public enum Against {
  /** Each evidence sheet by itself. */
  SHEET("each evidence sheet"),
  /** The sheets of a site, each by itself and together. */
  SITE("each site, feature by feature and as a group"),
  /** The sheets of a phase of a site, each by itself and together. */
  PHASE("each phase of a site, feature by feature and as a group"),
  /** The sheets of a period, each by itself and together. */
  PERIOD("each period, feature by feature and as a group"),
  /** The sheets of a region, each by itself and together. */
  REGION("each region, feature by feature and as a group"),
  /** The remains of the other trials, as though they had been dug up. */
  TRIAL("each other trial");

  private final String word;

  Against(String word) {
    this.word = word;
  }

  /** What it is, in words. */
  public String word() {
    return word;
  }
}
