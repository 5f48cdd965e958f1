package daubline.ui.compare;

import daubline.analysis.Target;
import daubline.engine.inference.Comparison;
import daubline.ui.study.Compared;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

/** The pair of trial and target that is looked at, and the criterion when one was chosen; map, ranking and reasons follow it. */
public final class Selection {

  private static final List<Runnable> LISTENERS = new CopyOnWriteArrayList<>();
  private static Comparison comparison;
  private static String criterion = "";

  private Selection() {
  }

  /** Looks at a pair; null at none. */
  public static void set(Comparison now) {
    set(now, "");
  }

  /** Looks at one criterion of a pair, by its id; empty for all. */
  public static void set(Comparison now, String ofCriterion) {
    comparison = now;
    criterion = ofCriterion;
    LISTENERS.forEach(Runnable::run);
  }

  /** The pair looked at. */
  public static Optional<Comparison> get() {
    return Optional.ofNullable(comparison);
  }

  /** The criterion looked at, by its id; empty when none was chosen. */
  public static String criterion() {
    return criterion;
  }

  /** The target looked at: that of the pair, otherwise the first of which anything could be tested, otherwise the first. */
  public static Optional<Target> target(Compared now) {
    return get().flatMap(c -> now.target(c.sheet()))
        .or(() -> now.targets().stream().filter(t -> now.results().ranked(t.sheet().id()).stream().anyMatch(Comparison::isTested)).findFirst())
        .or(() -> now.targets().stream().findFirst());
  }

  /** Goes on looking at the same pair after new results, if it is still there. */
  static void follow(Compared now) {
    get().ifPresent(old -> set(now == null ? null : now.results().comparison(old.trial(), old.sheet()).orElse(null), criterion));
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
