package daubline.session.merge;

import daubline.model.Identified;
import daubline.model.Named;
import daubline.model.Reading;
import daubline.model.Study;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** The objects of one copy by a key that is the same in all copies: their id, and where there is none their place. */
final class Tree {

  /** The key of the study itself. */
  static final String ROOT = "";

  private final Map<String, EObject> objects = new LinkedHashMap<>();
  private final Map<EObject, String> keys = new HashMap<>();
  private final Map<String, Set<String>> users = new HashMap<>();

  /**
   * Indexes a copy.
   *
   * @param study the copy; null for none
   * @param other the copy in which the only part of a kind may stand under another id, such as the remains of a trial; may be null
   */
  Tree(Study study, Tree other) {
    if (study != null) {
      index(study, ROOT, other);
      objects.forEach(this::noteUses);
    }
  }

  private void index(EObject object, String key, Tree other) {
    objects.put(key, object);
    keys.put(object, key);
    for (EReference containment : Fields.containments(object.eClass())) {
      int number = 0;
      for (EObject child : children(object, containment)) {
        index(child, key(child, key, containment, number++, other), other);
      }
    }
  }

  private String key(EObject child, String parent, EReference containment, int number, Tree other) {
    String id = child instanceof Identified i ? i.getId() : null;
    if (!containment.isMany() && other != null && (id == null || other.get(id) == null)) {
      EObject counterpart = other.get(parent);
      if (counterpart != null && counterpart.eClass().getEAllContainments().contains(containment) && counterpart.eGet(containment) instanceof EObject same) {
        return other.key(same);
      }
    }
    return id == null || id.isBlank() || objects.containsKey(id) ? parent + "/" + containment.getName() + "." + number : id;
  }

  private void noteUses(String key, EObject object) {
    for (EReference reference : object.eClass().getEAllReferences()) {
      if (!reference.isContainment() && !reference.isContainer()) {
        targets(object, reference).forEach(t -> users.computeIfAbsent(t, k -> new LinkedHashSet<>()).add(key + " " + reference.getName()));
      }
    }
  }

  /** The children in one containment, in order. */
  @SuppressWarnings("unchecked")
  static List<EObject> children(EObject object, EReference containment) {
    Object value = object.eGet(containment);
    return value instanceof List<?> list ? (List<EObject>) list : value == null ? List.of() : List.of((EObject) value);
  }

  /** The keys of what a reference leads to; what leads nowhere keeps the id that it names. */
  List<String> targets(EObject object, EReference reference) {
    List<String> found = new ArrayList<>();
    for (EObject target : children(object, reference)) {
      found.add(keys.containsKey(target) ? keys.get(target) : target.eIsProxy() ? EcoreUtil.getURI(target).fragment() : EcoreUtil.getID(target));
    }
    return found;
  }

  Set<String> keys() {
    return objects.keySet();
  }

  boolean has(String key) {
    return objects.containsKey(key);
  }

  EObject get(String key) {
    return objects.get(key);
  }

  String key(EObject object) {
    return keys.get(object);
  }

  /** The key of what contains an object; null for the study. */
  String container(String key) {
    return keys.get(get(key).eContainer());
  }

  /** Takes a new object in under a key. */
  void put(String key, EObject object) {
    keys.remove(objects.get(key));
    objects.put(key, object);
    keys.put(object, key);
  }

  /** Who refers to an object. */
  Set<String> users(String key) {
    return users.getOrDefault(key, Set.of());
  }

  /** The keys of an object and of everything in it. */
  Set<String> within(String key) {
    Set<String> all = new LinkedHashSet<>(Set.of(key));
    get(key).eAllContents().forEachRemaining(o -> all.add(keys.get(o)));
    return all;
  }

  /** What a group of fields says, so that it can be compared with that of another copy. */
  List<Object> value(String key, Fields.Group group) {
    List<Object> values = new ArrayList<>();
    EObject object = get(key);
    for (EStructuralFeature feature : group.features()) {
      if (!object.eClass().getEAllStructuralFeatures().contains(feature)) {
        values.add(null);
      } else if (feature instanceof EReference reference) {
        values.add(targets(object, reference));
      } else {
        Object value = object.eGet(feature);
        values.add(value instanceof String text && text.isEmpty() ? null : value);
      }
    }
    return values;
  }

  /** What a group of fields says, for a person. */
  String text(String key, Fields.Group group) {
    EObject object = get(key);
    if (object instanceof Reading reading && group.features().size() > 2 && reading.getTyped() != null && !reading.getTyped().isBlank()) {
      return (reading.getTyped() + " " + (reading.getUnit() == null ? "" : reading.getUnit())).strip();
    }
    List<String> parts = new ArrayList<>();
    for (EStructuralFeature feature : group.features()) {
      if (object.eClass().getEAllStructuralFeatures().contains(feature)) {
        String text = feature instanceof EReference reference ? String.join(", ", children(object, reference).stream().map(Tree::name).toList())
            : EcoreUtil.convertToString(((EAttribute) feature).getEAttributeType(), object.eGet(feature));
        if (text != null && !text.isBlank()) {
          parts.add(text);
        }
      }
    }
    return String.join(" · ", parts);
  }

  /** The name of an object in the words of the study. */
  static String name(EObject object) {
    if (object.eIsProxy()) {
      return EcoreUtil.getURI(object).fragment();
    }
    String name = object instanceof Named named ? named.getName() : null;
    if (name == null || name.isBlank()) {
      EStructuralFeature told = List.of("name", "variable", "key", "kind", "role", "number", "run").stream().map(n -> object.eClass().getEStructuralFeature(n))
          .filter(f -> f instanceof EAttribute && object.eGet(f) != null).findFirst().orElse(null);
      name = told == null ? "" : EcoreUtil.convertToString(((EAttribute) told).getEAttributeType(), object.eGet(told));
    }
    return name.isBlank() ? object.eClass().getName() + " " + EcoreUtil.getID(object) : name;
  }

  /** The names that lead to an object. */
  String place(String key) {
    List<String> names = new ArrayList<>();
    for (EObject step = get(key); step != null && (names.isEmpty() || !(step instanceof Study)); step = step.eContainer()) {
      names.add(0, name(step));
    }
    return String.join(" · ", names);
  }
}
