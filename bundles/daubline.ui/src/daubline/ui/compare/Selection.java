package daubline.ui.compare;

import daubline.engine.inference.Comparison;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

/** The pair of trial and sheet that is looked at; grid, ranking and reasons follow it. */
public final class Selection {

  private static final List<Runnable> LISTENERS = new CopyOnWriteArrayList<>();
  private static Comparison comparison;

  private Selection() {
  }

  /** Looks at a pair. */
  public static void set(Comparison now) {
    comparison = now;
    LISTENERS.forEach(Runnable::run);
  }

  /** The pair looked at. */
  public static Optional<Comparison> get() {
    return Optional.ofNullable(comparison);
  }

  /** Adds a listener told when another pair is looked at. */
  public static void onChange(Runnable listener) {
    LISTENERS.add(listener);
  }

  /** Removes a listener. */
  public static void remove(Runnable listener) {
    LISTENERS.remove(listener);
  }
}
