package daubline.engine.inference;

/** Told how far long work has come, and asked whether to go on; may be called by several threads at once. */
public interface Progress {

  /** Shows nothing and never stops. */
  Progress NONE = new Progress() {
    @Override
    public void done(int part, int all) {
      // nobody watches
    }

    @Override
    public boolean isCancelled() {
      return false;
    }
  };

  /** So many parts of all are done. */
  void done(int part, int all);

  /** Whether to stop; nothing is returned then. */
  boolean isCancelled();
}
