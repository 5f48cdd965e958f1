package daubline.session.merge;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The order of a list that two people changed. */
final class Order {

  private Order() {
  }

  /** What of a list also stands in all the others, in its order. */
  static List<String> common(List<String> list, List<List<String>> others) {
    return list.stream().filter(k -> others.stream().allMatch(o -> o.contains(k))).toList();
  }

  /**
   * The order of the first list, with what only the second holds after what comes before it there.
   *
   * @param wanted what is to stand in the list at last
   */
  static List<String> of(List<String> first, List<String> second, Set<String> wanted) {
    List<String> order = new ArrayList<>(first.stream().filter(wanted::contains).toList());
    Set<String> there = new HashSet<>(order);
    Set<String> inSecond = new HashSet<>(second);
    String before = null;
    for (String key : second) {
      if (wanted.contains(key) && there.add(key)) {
        int at = before == null ? 0 : order.indexOf(before) + 1;
        while (at < order.size() && before != null && !inSecond.contains(order.get(at))) {
          at++;
        }
        order.add(at, key);
      }
      if (there.contains(key)) {
        before = key;
      }
    }
    wanted.stream().filter(there::add).forEach(order::add);
    return order;
  }

  /** A list of references in which both took away and added: what either took away is gone, what either added is there. */
  static List<String> merged(List<String> base, List<String> mine, List<String> theirs) {
    Set<String> wanted = new java.util.LinkedHashSet<>(mine);
    wanted.addAll(theirs);
    base.stream().filter(k -> !mine.contains(k) || !theirs.contains(k)).forEach(wanted::remove);
    return of(mine, theirs, wanted);
  }
}
