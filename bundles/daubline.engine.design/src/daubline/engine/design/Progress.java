package daubline.engine.design;

import java.util.concurrent.CancellationException;

/** Told by long searches how far they are, and asked whether to go on. Called from several threads at once. */
public interface Progress {

  /** Says nothing and never stops. */
  Progress NONE = new Progress() {
    @Override
    public void done(double share) {
      // nobody watches
    }

    @Override
    public boolean cancelled() {
      return false;
    }
  };

  /** So much is done, 0 to 1. */
  void done(double share);

  /** Whether the user wants to stop. */
  boolean cancelled();

  /** Ends the search when the user wants to. @throws CancellationException then */
  default void check() {
    if (cancelled()) {
      throw new CancellationException("the search was stopped");
    }
  }
}
