package daubline.session;

import daubline.model.Earlier;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.Person;
import daubline.model.Reading;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Keeps with a value what it was before it was changed: a value that had been saved is not lost when somebody types another
 * over it. Corrections of what was typed since the last save leave no trace, and one saved value is kept once.
 */
final class EarlierValues {

  private static final Set<EStructuralFeature> KEPT = Set.of(Literals.READING__TYPED, Literals.READING__UNIT, Literals.READING__KIND, Literals.READING__VALUE, Literals.READING__BY);

  /** What came in since the last save. */
  private final Set<EObject> fresh = Collections.newSetFromMap(new IdentityHashMap<>());
  /** What was kept of values since the last save. */
  private final Map<Reading, Earlier> kept = new IdentityHashMap<>();

  /** Forgets what is new, since all is saved now. */
  void saved() {
    fresh.clear();
    kept.clear();
  }

  /**
   * Keeps the earlier values of what a change did; part of the change, so that undo takes it back with it.
   *
   * @param steps what the change did so far
   * @param change its name
   */
  void keep(List<Step> steps, String change, Instant now) {
    Map<Reading, Map<EStructuralFeature, Object>> before = new IdentityHashMap<>();
    for (Step step : List.copyOf(steps)) {
      if (step.feature() instanceof EReference reference && reference.isContainment()) {
        step.arrivals().stream().filter(EObject.class::isInstance).map(EObject.class::cast).forEach(fresh::add);
      } else if (step instanceof Step.Put put && put.object() instanceof Reading reading && KEPT.contains(put.feature())) {
        before.computeIfAbsent(reading, r -> new HashMap<>()).putIfAbsent(put.feature(), put.before());
      }
    }
    before.forEach((reading, old) -> {
      if (isChanged(reading, old) && !isFresh(reading) && !isKept(reading)) {
        Earlier earlier = earlier(reading, old);
        earlier.setChange(change);
        earlier.setUntil(now.truncatedTo(ChronoUnit.SECONDS).toString());
        reading.getEarlier().add(earlier);
        kept.put(reading, earlier);
      }
    });
  }

  /** Whether the value itself is another one; who recorded it alone makes none. */
  private static boolean isChanged(Reading reading, Map<EStructuralFeature, Object> old) {
    boolean said = old.get(Literals.READING__TYPED) != null || old.get(Literals.READING__VALUE) != null || reading.getKind() != null && old.containsKey(Literals.READING__KIND);
    return said && reading.eContainer() != null && old.entrySet().stream().anyMatch(e -> e.getKey() != Literals.READING__BY && !Objects.equals(e.getValue(), reading.eGet(e.getKey())));
  }

  private boolean isFresh(EObject object) {
    for (EObject o = object; o != null; o = o.eContainer()) {
      if (fresh.contains(o)) {
        return true;
      }
    }
    return false;
  }

  /** Whether the saved value is kept already, and was not taken back by undo. */
  private boolean isKept(Reading reading) {
    return kept.containsKey(reading) && kept.get(reading).eContainer() == reading;
  }

  private static Earlier earlier(Reading reading, Map<EStructuralFeature, Object> old) {
    Earlier earlier = ModelFactory.eINSTANCE.createEarlier();
    earlier.setTyped((String) before(reading, old, Literals.READING__TYPED));
    earlier.setUnit((String) before(reading, old, Literals.READING__UNIT));
    earlier.setKind((daubline.base.ValueKind) before(reading, old, Literals.READING__KIND));
    earlier.setValue((Double) before(reading, old, Literals.READING__VALUE));
    earlier.setBy((Person) before(reading, old, Literals.READING__BY));
    return earlier;
  }

  private static Object before(Reading reading, Map<EStructuralFeature, Object> old, EStructuralFeature feature) {
    return old.containsKey(feature) ? old.get(feature) : reading.eGet(feature);
  }

  /** Takes out of copies what the originals were before: a copy has no history. */
  static void forget(Collection<? extends EObject> copies) {
    for (EObject copy : copies) {
      List<EObject> all = new ArrayList<>(List.of(copy));
      copy.eAllContents().forEachRemaining(all::add);
      all.stream().filter(Reading.class::isInstance).forEach(r -> ((Reading) r).getEarlier().clear());
    }
  }
}
