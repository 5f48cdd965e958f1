package daubline.publication;

/** Told what is being written, and asked whether to go on. */
public interface Progress {

  /** Tells nobody and goes on. */
  Progress NONE = what -> true;

  /**
   * Called before each part.
   *
   * @param what what is written next
   * @return false to stop there; files written before stay
   */
  boolean next(String what);
}
