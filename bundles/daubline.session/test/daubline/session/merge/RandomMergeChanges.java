package daubline.session.merge;

import daubline.model.Identified;
import daubline.model.Study;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Random changes of a study: fields, references, additions, deletions, moves, orders. */
final class RandomMergeChanges {

  private static final int MEETING = 40;

  private RandomMergeChanges() {
  }

  /** Some changes, made in the name of somebody. */
  static void change(Study study, Random random, String who) {
    int count = 5 + random.nextInt(40);
    for (int i = 0; i < count; i++) {
      List<EObject> all = new ArrayList<>();
      study.eAllContents().forEachRemaining(all::add);
      // half of the changes meet in a small part of the study
      EObject object = all.get(random.nextInt(random.nextBoolean() ? Math.min(MEETING, all.size()) : all.size()));
      switch (random.nextInt(8)) {
        case 0, 1, 2 -> attribute(object, random, who);
        case 3 -> reference(object, all, random);
        case 4 -> add(object, random, who + i);
        case 5 -> EcoreUtil.deleteAll(List.of(object), true);
        case 6 -> move(object, all, random);
        default -> reorder(object, random);
      }
    }
  }

  private static void attribute(EObject object, Random random, String who) {
    List<EAttribute> all = object.eClass().getEAllAttributes().stream().filter(a -> !a.isID() && !a.isMany()).toList();
    EAttribute attribute = all.get(random.nextInt(all.size()));
    switch (attribute.getEAttributeType().getInstanceClassName()) {
      case "java.lang.String" -> object.eSet(attribute, random.nextInt(5) == 0 ? null : who + random.nextInt(3));
      case "java.lang.Double" -> object.eSet(attribute, (double) random.nextInt(3));
      case "boolean" -> object.eSet(attribute, !(Boolean) object.eGet(attribute));
      default -> {
        // the others are of fixed words
      }
    }
  }

  @SuppressWarnings("unchecked")
  private static void reference(EObject object, List<EObject> all, Random random) {
    for (EReference reference : object.eClass().getEAllReferences()) {
      List<EObject> fitting = all.stream().filter(o -> reference.getEReferenceType().isSuperTypeOf(o.eClass())).toList();
      if (!reference.isContainment() && !fitting.isEmpty() && random.nextBoolean()) {
        EObject target = fitting.get(random.nextInt(fitting.size()));
        if (reference.isMany()) {
          EList<EObject> list = (EList<EObject>) object.eGet(reference);
          if (!list.remove(target)) {
            list.add(random.nextInt(list.size() + 1), target);
          }
        } else {
          object.eSet(reference, random.nextInt(4) == 0 ? null : target);
        }
        return;
      }
    }
  }

  @SuppressWarnings("unchecked")
  private static void add(EObject object, Random random, String id) {
    if (object.eContainingFeature().isMany()) {
      EObject copy = EcoreUtil.copy(object);
      int[] number = new int[1];
      ((Identified) copy).setId(id);
      copy.eAllContents().forEachRemaining(o -> ((Identified) o).setId(id + "." + number[0]++));
      EList<EObject> list = (EList<EObject>) object.eContainer().eGet(object.eContainingFeature());
      list.add(random.nextInt(list.size() + 1), copy);
    }
  }

  @SuppressWarnings("unchecked")
  private static void move(EObject object, List<EObject> all, Random random) {
    EStructuralFeature feature = object.eContainingFeature();
    List<EObject> places = all.stream().filter(o -> o.eClass().getEAllContainments().contains(feature) && !EcoreUtil.isAncestor(object, o)).toList();
    if (feature.isMany() && !places.isEmpty()) {
      EList<EObject> list = (EList<EObject>) places.get(random.nextInt(places.size())).eGet(feature);
      if (!list.contains(object)) {
        list.add(random.nextInt(list.size() + 1), object);
      }
    }
  }

  @SuppressWarnings("unchecked")
  private static void reorder(EObject object, Random random) {
    if (object.eContainingFeature().isMany()) {
      EList<EObject> list = (EList<EObject>) object.eContainer().eGet(object.eContainingFeature());
      list.move(random.nextInt(list.size()), object);
    }
  }
}
