package daubline.session.merge;

import daubline.model.Study;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/**
 * What putting two copies of a study together does, object by object: three-way where what both began from is known, two-way
 * otherwise. Additions of both are united; what one changed, moved or deleted is taken; where both did something different
 * there is a {@link Conflict}, and mine stays until somebody chooses. An object goes only when one person deleted it and
 * the other left it, everything in it and every reference to it alone.
 */
public final class StudyMerge {

  final Tree mine;
  final Tree theirs;
  final Tree base;
  final Set<String> added = new LinkedHashSet<>();
  final Set<String> deleted = new LinkedHashSet<>();
  final Set<String> moved = new LinkedHashSet<>();
  final Set<String> resorted = new LinkedHashSet<>();
  final Map<String, List<Fields.Group>> changed = new LinkedHashMap<>();
  final Map<String, Object> listed = new LinkedHashMap<>();
  final Set<String> ordered = new LinkedHashSet<>();
  private final Map<String, List<String>> before = new LinkedHashMap<>();
  private final Map<String, Conflict> conflicts = new LinkedHashMap<>();

  private StudyMerge(Study mine, Study theirs, Study base) {
    this.base = new Tree(base, null);
    this.mine = new Tree(mine, null);
    this.theirs = new Tree(theirs, this.mine);
    this.theirs.keys().forEach(this::fromTheirs);
    this.mine.keys().forEach(this::fromMine);
    this.mine.keys().stream().filter(this.theirs::has).forEach(this::inBoth);
  }

  /**
   * Compares the copies; changes nothing.
   *
   * @param mine the study that is merged into
   * @param theirs the other copy
   * @param base what both began from; null when it is not known: then everything that differs is a conflict, and what is in one copy
   *     only counts as added
   */
  public static StudyMerge of(Study mine, Study theirs, Study base) {
    return new StudyMerge(mine, theirs, base);
  }

  /** Whether what both began from is known. */
  public boolean isThreeWay() {
    return base.has(Tree.ROOT);
  }

  /** What a person has to choose. */
  public List<Conflict> conflicts() {
    return List.copyOf(conflicts.values());
  }

  /** What is taken from the other copy without asking, one line for each object. */
  public List<String> taken() {
    List<String> lines = new ArrayList<>();
    added.stream().filter(k -> !added.contains(theirs.container(k))).forEach(k -> lines.add("added: " + theirs.place(k)));
    deleted.forEach(k -> lines.add("deleted: " + mine.place(k)));
    moved.forEach(k -> lines.add("moved: " + theirs.place(k)));
    resorted.forEach(k -> lines.add("of another kind: " + theirs.place(k)));
    changed.forEach((k, groups) -> lines.add("changed: " + mine.place(k) + ": "
        + String.join("; ", groups.stream().map(g -> g.name() + " “" + mine.text(k, g) + "” → “" + theirs.text(k, g) + "”").toList())));
    listed.keySet().forEach(k -> lines.add("added and taken away: " + mine.place(k.substring(0, k.indexOf('\t'))) + ": " + k.substring(k.indexOf('\t') + 1)));
    ordered.forEach(k -> lines.add("order: " + mine.place(k.substring(0, k.indexOf('\t'))) + ": " + k.substring(k.indexOf('\t') + 1)));
    return lines;
  }

  private void conflict(Conflict.Kind kind, String key, Tree named, String field, String was, String here, String there) {
    String id = kind + " " + key + " " + field;
    conflicts.put(id, new Conflict(id, kind, named.place(key), named.get(key).eClass().getName(), field, was, here, there));
  }

  private void fromTheirs(String key) {
    if (mine.has(key)) {
      return;
    }
    String container = theirs.container(key);
    boolean goesWithContainer = container != null && !mine.has(container) && base.has(container);
    if (goesWithContainer) {
      return;
    }
    if (!base.has(key)) {
      added.add(key);
    } else if (isTouched(theirs, key)) {
      conflict(Conflict.Kind.DELETED_HERE, key, theirs, "", base.place(key), "", theirs.place(key));
    }
  }

  private void fromMine(String key) {
    if (theirs.has(key) || !base.has(key)) {
      return;
    }
    String container = mine.container(key);
    boolean goesWithContainer = container != null && !theirs.has(container) && base.has(container);
    if (!goesWithContainer && isTouched(mine, key)) {
      conflict(Conflict.Kind.DELETED_THERE, key, mine, "", base.place(key), mine.place(key), "");
    } else if (!goesWithContainer) {
      deleted.add(key);
    }
  }

  /** Whether an object, anything in it or a reference to it differs from what both began from. */
  private boolean isTouched(Tree tree, String key) {
    Set<String> within = tree.within(key);
    if (!within.equals(base.within(key)) || !Objects.equals(tree.container(key), base.container(key))) {
      return true;
    }
    for (String part : within) {
      boolean differs = tree.get(part).eClass() != base.get(part).eClass() || !base.users(part).containsAll(tree.users(part))
          || Fields.of(tree.get(part).eClass()).stream().anyMatch(g -> !tree.value(part, g).equals(base.value(part, g)))
          || Fields.containments(tree.get(part).eClass()).stream().anyMatch(c -> !keys(tree, part, c).equals(keys(base, part, c)));
      if (differs) {
        return true;
      }
    }
    return false;
  }

  static List<String> keys(Tree tree, String key, EReference containment) {
    EObject object = tree.get(key);
    return object == null || !object.eClass().getEAllContainments().contains(containment) ? List.of()
        : Tree.children(object, containment).stream().map(tree::key).toList();
  }

  private void inBoth(String key) {
    sort(key);
    EClass type = mine.get(key).eClass();
    Fields.of(type).forEach(group -> field(key, group));
    place(key);
    Fields.containments(type).stream().filter(EReference::isMany).forEach(c -> order(key, c));
  }

  private void sort(String key) {
    EClass here = mine.get(key).eClass();
    EClass there = theirs.get(key).eClass();
    EClass was = base.has(key) ? base.get(key).eClass() : null;
    if (here == there || there == was) {
      return;
    }
    if (here == was && !isTouched(mine, key)) {
      resorted.add(key);
    } else {
      conflict(Conflict.Kind.SORT, key, mine, "", was == null ? "" : was.getName(), here.getName(), there.getName());
    }
  }

  private void field(String key, Fields.Group group) {
    List<Object> here = mine.value(key, group);
    List<Object> there = theirs.value(key, group);
    List<Object> was = base.has(key) ? base.value(key, group) : null;
    if (here.equals(there) || there.equals(was)) {
      return;
    }
    if (here.equals(was)) {
      changed.computeIfAbsent(key, k -> new ArrayList<>()).add(group);
    } else if (was != null && isListOfReferences(group)) {
      listed.put(key + "\t" + group.name(), Order.merged(strings(was), strings(here), strings(there)));
    } else {
      conflict(Conflict.Kind.FIELD, key, mine, group.name(), was == null ? "" : base.text(key, group), mine.text(key, group), theirs.text(key, group));
    }
  }

  private static boolean isListOfReferences(Fields.Group group) {
    return group.features().size() == 1 && group.features().get(0) instanceof EReference r && r.isMany();
  }

  @SuppressWarnings("unchecked")
  private static List<String> strings(List<Object> value) {
    return (List<String>) value.get(0);
  }

  private static String where(Tree tree, String key) {
    EObject object = tree.get(key);
    return object == null || object.eContainer() == null ? "" : tree.container(key) + " " + object.eContainingFeature().getName();
  }

  private void place(String key) {
    String here = where(mine, key);
    String there = where(theirs, key);
    String was = where(base, key);
    if (here.equals(there) || base.has(key) && there.equals(was)) {
      return;
    }
    if (base.has(key) && here.equals(was)) {
      moved.add(key);
    } else {
      conflict(Conflict.Kind.PLACE, key, mine, "", base.has(key) ? base.place(key) : "", mine.place(key), theirs.place(key));
    }
  }

  private void order(String key, EReference containment) {
    List<String> here = keys(mine, key, containment);
    List<String> there = keys(theirs, key, containment);
    List<String> was = keys(base, key, containment);
    before.put(key + "\t" + containment.getName(), here);
    if (Order.common(here, List.of(there)).equals(Order.common(there, List.of(here)))) {
      return;
    }
    List<String> known = Order.common(was, List.of(here, there));
    boolean hereAsWas = base.has(key) && Order.common(here, List.of(was, there)).equals(known);
    boolean thereAsWas = base.has(key) && Order.common(there, List.of(was, here)).equals(known);
    if (hereAsWas && !thereAsWas) {
      ordered.add(key + "\t" + containment.getName());
    } else if (!thereAsWas) {
      conflict(Conflict.Kind.ORDER, key, mine, containment.getName(), names(base, was), names(mine, here), names(theirs, there));
    }
  }

  /** The parts of an object of mine in their order before anything was changed. */
  List<String> before(String key, EReference containment) {
    return before.getOrDefault(key + "\t" + containment.getName(), List.of());
  }

  private static String names(Tree tree, List<String> keys) {
    return String.join(", ", keys.stream().map(k -> Tree.name(tree.get(k))).toList());
  }

  /**
   * Puts the copies together; for use inside one change of the study that is merged into.
   *
   * @param choices whose version is taken, by id of the conflict; without a choice mine stays
   * @return what could not be kept of the other copy, such as a reference to what is gone; one line each
   */
  public List<String> apply(Map<String, Side> choices) {
    return new Application(this, id -> choices.getOrDefault(id, Side.MINE)).run();
  }
}
