package daubline.publication;

/** Told what is written next, and asked whether to go on. */
public interface Progress {

  /** Nobody listens, and nothing stops. */
  Progress NONE = (what, done, all) -> true;

  /**
   * The next step begins.
   *
   * @param what what is written
   * @param done steps done before
   * @param all steps in all
   * @return whether to go on
   */
  boolean next(String what, int done, int all);
}
