package daubline.session.backup;

import java.util.concurrent.CancellationException;

/** Told how far a copy has come; says whether to go on. */
public interface Work {

  /** Nobody watches, and nobody stops it. */
  Work UNWATCHED = (what, done, all) -> true;

  /**
   * Told before each file.
   *
   * @param what the file, relative to the study's folder
   * @param done bytes dealt with so far
   * @param all bytes altogether
   * @return false to stop; nothing half is left then
   */
  boolean goesOn(String what, long done, long all);

  /** Stops by an exception when it was asked to. */
  default void tell(String what, long done, long all) {
    if (!goesOn(what, done, all)) {
      throw new CancellationException(what);
    }
  }
}
