package daubline.intake;

import daubline.base.Amount;
import daubline.base.Printed;
import daubline.model.Identified;
import daubline.model.ModelPackage;
import daubline.model.Named;
import daubline.model.Reading;
import daubline.session.Readings;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** What one row adds to a study and changes in it. It sets only what differs, so that the same row again changes nothing. */
final class Tally {

  private static final List<EStructuralFeature> VALUE = List.of(ModelPackage.Literals.READING__KIND,
      ModelPackage.Literals.READING__VALUE,
      ModelPackage.Literals.READING__LOW, ModelPackage.Literals.READING__HIGH, ModelPackage.Literals.READING__SIGMA,
      ModelPackage.Literals.READING__CATEGORY, ModelPackage.Literals.READING__TYPED, ModelPackage.Literals.READING__UNIT);

  private final Set<EObject> fresh = Collections.newSetFromMap(new IdentityHashMap<>());
  private final List<String> changes = new ArrayList<>();
  private boolean added;

  /** Whether the thing that the row is about came in with it. */
  boolean isAdded() {
    return added;
  }

  /** What the row changes, in words. */
  List<String> changes() {
    return changes;
  }

  /** Notes an object that comes in; its features are no changes of their own. */
  <T extends EObject> T fresh(T object) {
    fresh.add(object);
    return object;
  }

  /** Notes the object that the row is about, when it comes in. */
  <T extends EObject> T subject(T object) {
    added = true;
    return fresh(object);
  }

  /** Notes a part that comes into something that was there. */
  void partAdded(String what) {
    changes.add(what);
  }

  /** Sets a feature; null says nothing and leaves what is there. */
  void set(EObject object, EStructuralFeature feature, Object value) {
    if (value != null && !Objects.equals(value, object.eIsSet(feature) ? object.eGet(feature) : null) && !isDefault(object,
        feature, value)) {
      note(object, feature.getName() + ": " + word(object.eGet(feature)) + " → " + word(value));
      object.eSet(feature, value);
    }
  }

  /** A value that equals the feature's default while nothing is set is no change. */
  private static boolean isDefault(EObject object, EStructuralFeature feature, Object value) {
    return !object.eIsSet(feature) && value.equals(feature.getDefaultValue()) && value instanceof Boolean;
  }

  /** Adds to a list of references what it lacks. */
  <T extends Named> void include(EObject object, List<T> list, List<T> wanted) {
    wanted.stream().filter(w -> !list.contains(w)).distinct().forEach(w -> {
      note(object, "added: " + word(w));
      list.add(w);
    });
  }

  /** Puts a value into a reading; one that says the same in another writing is left as it was typed. */
  void put(Reading reading, ReadValue value) {
    if (reading.getKind() != null && Readings.amount(reading).equals(value.amount())) {
      return;
    }
    String before = reading.getKind() == null ? "–" : printed(reading);
    Reading wanted = (Reading) reading.eClass().getEPackage().getEFactoryInstance().create(reading.eClass());
    Readings.put(wanted, value.amount());
    wanted.setTyped(value.typed());
    wanted.setUnit(value.unit());
    VALUE.forEach(f -> reading.eSet(f, wanted.eGet(f)));
    note(reading, name(reading) + ": " + before + " → " + printed(reading));
  }

  private static String name(Reading reading) {
    return reading.getVariable() == null ? "value" : reading.getVariable();
  }

  private static String printed(Reading reading) {
    String typed = reading.getTyped();
    Amount amount = Readings.amount(reading);
    String text = typed != null ? typed : amount.isNumber() ? Printed.number(amount.value()) : amount.kind().word();
    return reading.getUnit() == null ? text : (text + " " + reading.getUnit()).strip();
  }

  private void note(EObject object, String change) {
    if (!fresh.contains(object)) {
      changes.add(change);
    }
  }

  private static String word(Object value) {
    if (value == null) {
      return "–";
    }
    if (value instanceof Named named && named.getName() != null) {
      return named.getName();
    }
    return value instanceof Identified identified ? String.valueOf(identified.getId()) : value.toString();
  }
}
