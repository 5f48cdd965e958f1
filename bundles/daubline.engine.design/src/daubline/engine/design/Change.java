package daubline.engine.design;

/** How often the setting of a factor can be changed. */
public enum Change {
  /** Set anew for every trial, such as the blast. */
  EACH_TRIAL("each trial"),
  /** Fixed when a furnace is built, such as its height. */
  EACH_FURNACE("each furnace"),
  /** Fixed for a day of burning, such as the crew. */
  EACH_DAY("each day"),
  /** Given beforehand and never exchanged, such as the season in which a trial must fall. */
  GIVEN("given");

  private final String word;

  Change(String word) {
    this.word = word;
  }

  /** In words, to follow "changes". */
  public String word() {
    return word;
  }
}
