package daubline.ui.study;

import daubline.base.Trail;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

/** The number that is selected in whatever part of the window, with its trail: the view Where From follows it. */
public final class Chosen {

  private static final List<Runnable> LISTENERS = new CopyOnWriteArrayList<>();
  private static Trail trail;

  private Chosen() {
  }

  /** Selects a number by its trail; null when what is selected is none. */
  public static void set(Trail newTrail) {
    trail = newTrail;
    LISTENERS.forEach(Runnable::run);
  }

  /** The trail of the selected number. */
  public static Optional<Trail> trail() {
    return Optional.ofNullable(trail);
  }

  /** Adds a listener told when another number is selected. */
  public static void onChange(Runnable listener) {
    LISTENERS.add(listener);
  }

  /** Removes a listener. */
  public static void remove(Runnable listener) {
    LISTENERS.remove(listener);
  }
}
