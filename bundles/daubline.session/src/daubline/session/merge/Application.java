package daubline.session.merge;

import daubline.model.Identified;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Does what a merge found, with the choices made: kinds, additions, moves, fields, deletions, order. */
final class Application {

  private final StudyMerge plan;
  private final Tree mine;
  private final Tree theirs;
  private final Set<String> added;
  private final Set<String> deleted;
  private final Set<String> moved;
  private final Set<String> resorted;
  private final Set<String> theirOrder;
  private final List<String> lost = new ArrayList<>();

  Application(StudyMerge plan, Function<String, Side> choice) {
    this.plan = plan;
    mine = plan.mine;
    theirs = plan.theirs;
    added = new LinkedHashSet<>(plan.added);
    deleted = new LinkedHashSet<>(plan.deleted);
    moved = new LinkedHashSet<>(plan.moved);
    resorted = new LinkedHashSet<>(plan.resorted);
    theirOrder = new LinkedHashSet<>(plan.ordered);
    plan.conflicts().stream().filter(c -> choice.apply(c.id()) == Side.THEIRS).forEach(this::take);
  }

  private void take(Conflict conflict) {
    String rest = conflict.id().substring(conflict.kind().name().length() + 1);
    String key = rest.substring(0, rest.length() - conflict.field().length() - 1);
    switch (conflict.kind()) {
      case FIELD -> plan.changed.computeIfAbsent(key, k -> new ArrayList<>())
          .add(Fields.of(mine.get(key).eClass()).stream().filter(g -> g.name().equals(conflict.field())).findFirst().orElseThrow());
      case DELETED_HERE -> theirs.within(key).stream().filter(k -> !mine.has(k)).forEach(added::add);
      case DELETED_THERE -> deleted.add(key);
      case PLACE -> moved.add(key);
      case SORT -> resorted.add(key);
      case ORDER -> theirOrder.add(key + "\t" + conflict.field());
    }
  }

  List<String> run() {
    resorted.forEach(this::become);
    // what contains comes before what is contained: that is the order of their copy
    List<String> arriving = theirs.keys().stream().filter(added::contains).toList();
    arriving.forEach(this::add);
    moved.forEach(this::move);
    arriving.forEach(key -> Fields.of(theirs.get(key).eClass()).forEach(group -> take(key, group)));
    plan.changed.forEach((key, groups) -> groups.forEach(group -> take(key, group)));
    plan.listed.forEach(this::takeList);
    deleted.stream().filter(mine::has).forEach(this::delete);
    mine.keys().stream().filter(theirs::has).toList().forEach(this::arrange);
    return lost;
  }

  private void become(String key) {
    EObject old = mine.get(key);
    EObject other = theirs.get(key);
    EObject made = other.eClass().getEPackage().getEFactoryInstance().create(other.eClass());
    for (EStructuralFeature feature : made.eClass().getEAllStructuralFeatures()) {
      boolean id = feature instanceof EAttribute attribute && attribute.isID();
      if (!id && feature.isChangeable() && !feature.isDerived() && old.eClass().getEAllStructuralFeatures().contains(feature) && old.eIsSet(feature)) {
        Object value = old.eGet(feature);
        made.eSet(feature, value instanceof List<?> list ? new ArrayList<>(list) : value);
      }
    }
    EObject container = old.eContainer();
    EStructuralFeature place = old.eContainingFeature();
    List<EStructuralFeature.Setting> users = List.copyOf(EcoreUtil.UsageCrossReferencer.find(old, EcoreUtil.getRootContainer(old)));
    swap(container, place, old, made);
    if (made instanceof Identified identified) {
      identified.setId(((Identified) old).getId());
    }
    users.stream().filter(s -> s.getEObject() != container || s.getEStructuralFeature() != place).forEach(s -> swap(s.getEObject(), s.getEStructuralFeature(), old, made));
    mine.put(key, made);
    Fields.of(made.eClass()).stream().filter(g -> g.features().stream().noneMatch(old.eClass().getEAllStructuralFeatures()::contains)).forEach(g -> take(key, g));
  }

  /** Puts one object in the place of another; a list is told by adding and removing, which undo understands. */
  @SuppressWarnings("unchecked")
  private static void swap(EObject owner, EStructuralFeature feature, EObject old, EObject made) {
    if (feature.isMany()) {
      List<EObject> list = (List<EObject>) owner.eGet(feature);
      list.add(list.indexOf(old) + 1, made);
      list.remove(old);
    } else {
      owner.eSet(feature, made);
    }
  }

  private void add(String key) {
    EObject other = theirs.get(key);
    EObject container = mine.get(theirs.container(key));
    EStructuralFeature feature = other.eContainingFeature();
    if (container == null || !container.eClass().getEAllStructuralFeatures().contains(feature)) {
      lost.add(theirs.place(key) + ": what it belongs to is gone");
      return;
    }
    EObject made = other.eClass().getEPackage().getEFactoryInstance().create(other.eClass());
    if (made instanceof Identified identified && other instanceof Identified source) {
      identified.setId(source.getId());
    }
    if (put(container, feature, made)) {
      mine.put(key, made);
    } else {
      lost.add(theirs.place(key) + ": another stands in its place");
    }
  }

  @SuppressWarnings("unchecked")
  private static boolean put(EObject container, EStructuralFeature feature, EObject part) {
    if (feature.isMany()) {
      ((List<EObject>) container.eGet(feature)).add(part);
      return true;
    }
    if (container.eGet(feature) != null) {
      return false;
    }
    container.eSet(feature, part);
    return true;
  }

  private void move(String key) {
    EObject part = mine.get(key);
    EObject container = mine.get(theirs.container(key));
    boolean can = container != null && !EcoreUtil.isAncestor(part, container) && put(container, theirs.get(key).eContainingFeature(), part);
    if (!can) {
      lost.add(mine.place(key) + ": it stays where it is, since the place it was moved to is gone or lies within it");
    }
  }

  private void take(String key, Fields.Group group) {
    EObject target = mine.get(key);
    EObject source = theirs.get(key);
    for (EStructuralFeature feature : group.features()) {
      if (target == null || !target.eClass().getEAllStructuralFeatures().contains(feature) || !source.eClass().getEAllStructuralFeatures().contains(feature)) {
        continue;
      }
      if (feature instanceof EReference reference) {
        refer(key, target, reference, theirs.targets(source, reference));
      } else if (source.eIsSet(feature)) {
        target.eSet(feature, source.eGet(feature));
      } else {
        target.eUnset(feature);
      }
    }
  }

  @SuppressWarnings("unchecked")
  private void takeList(String place, Object targets) {
    String key = place.substring(0, place.indexOf('\t'));
    EObject target = mine.get(key);
    refer(key, target, (EReference) target.eClass().getEStructuralFeature(place.substring(key.length() + 1)), (List<String>) targets);
  }

  private void refer(String key, EObject target, EReference reference, List<String> keys) {
    List<EObject> found = new ArrayList<>();
    for (String wanted : keys) {
      if (mine.has(wanted)) {
        found.add(mine.get(wanted));
      } else if (theirs.has(wanted)) {
        lost.add(mine.place(key) + ": " + reference.getName() + " “" + Tree.name(theirs.get(wanted)) + "” is gone");
      }
    }
    if (reference.isMany()) {
      target.eSet(reference, found);
    } else {
      target.eSet(reference, found.isEmpty() ? null : found.get(0));
    }
  }

  /** Deletes an object; what their copy holds elsewhere goes there first. */
  private void delete(String key) {
    for (String part : List.copyOf(mine.within(key))) {
      if (part != null && theirs.has(part)) {
        move(part);
      }
    }
    EcoreUtil.deleteAll(List.of(mine.get(key)), true);
  }

  private void arrange(String key) {
    EClass type = mine.get(key).eClass();
    for (EReference containment : Fields.containments(type)) {
      if (containment.isMany() && theirs.get(key).eClass().getEAllContainments().contains(containment)) {
        arrange(key, containment);
      }
    }
  }

  @SuppressWarnings("unchecked")
  private void arrange(String key, EReference containment) {
    EList<EObject> list = (EList<EObject>) mine.get(key).eGet(containment);
    List<String> now = list.stream().map(mine::key).toList();
    List<String> before = plan.before(key, containment);
    List<String> there = StudyMerge.keys(theirs, key, containment);
    boolean theirsFirst = theirOrder.contains(key + "\t" + containment.getName());
    List<String> wanted = theirsFirst ? Order.of(there, before, new LinkedHashSet<>(now)) : Order.of(before, there, new LinkedHashSet<>(now));
    for (int i = 0; i < wanted.size(); i++) {
      EObject part = mine.get(wanted.get(i));
      if (list.get(i) != part) {
        list.move(i, part);
      }
    }
  }
}
