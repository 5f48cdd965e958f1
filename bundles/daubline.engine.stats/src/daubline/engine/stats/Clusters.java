package daubline.engine.stats;

import java.util.ArrayList;
import java.util.List;

/**
 * Hierarchical clusters by the recurrence of Lance &amp; Williams 1967, The Computer Journal 9, 373–380.
 *
 * @param heights height of each merge, in the order of merging
 * @param merges the two groups of members joined by each merge
 */
public record Clusters(List<Double> heights, List<List<List<Integer>>> merges) {

  /** How the distance to a merged group is taken. */
  public enum Linkage {
    /** The largest distance between members. */
    COMPLETE,
    /** Growth of the sum of squares (Ward 1963, on squared distances). */
    WARD
  }

  /**
   * Merges everything step by step; equal distances are merged in the order of the rows.
   *
   * @param distances distance of each pair, symmetric; for Ward the Euclidean distance
   */
  public static Clusters of(double[][] distances, Linkage linkage) {
    return new Builder(distances, linkage).run();
  }

  /** The groups when a number of groups is left, each with its members in rising order. */
  public List<List<Integer>> cut(int groups) {
    int members = heights.size() + 1;
    return groupsAfter(Math.max(0, members - groups));
  }

  /** The groups whose merges lie at or below a height. */
  public List<List<Integer>> cutAt(double height) {
    int count = 0;
    while (count < heights.size() && heights.get(count) <= height) {
      count++;
    }
    return groupsAfter(count);
  }

  private List<List<Integer>> groupsAfter(int count) {
    List<List<Integer>> groups = new ArrayList<>();
    for (int i = 0; i <= heights.size(); i++) {
      groups.add(List.of(i));
    }
    for (List<List<Integer>> merge : merges.subList(0, count)) {
      groups.removeAll(merge);
      groups.add(merge.stream().flatMap(List::stream).sorted().toList());
    }
    groups.sort((a, b) -> Integer.compare(a.get(0), b.get(0)));
    return groups;
  }

  private static final class Builder {
    private final double[][] d;
    private final Linkage linkage;
    private final List<List<Integer>> members = new ArrayList<>();
    private final List<Double> heights = new ArrayList<>();
    private final List<List<List<Integer>>> merges = new ArrayList<>();

    Builder(double[][] distances, Linkage linkage) {
      this.linkage = linkage;
      this.d = new double[distances.length][];
      for (int i = 0; i < d.length; i++) {
        d[i] = distances[i].clone();
        for (int j = 0; j < d.length && linkage == Linkage.WARD; j++) {
          d[i][j] *= d[i][j];
        }
        members.add(List.of(i));
      }
    }

    Clusters run() {
      for (int step = 1; step < d.length; step++) {
        merge();
      }
      return new Clusters(List.copyOf(heights), List.copyOf(merges));
    }

    private void merge() {
      int a = -1;
      int b = -1;
      for (int i = 0; i < d.length; i++) {
        for (int j = i + 1; j < d.length; j++) {
          boolean open = members.get(i) != null && members.get(j) != null;
          if (open && (a < 0 || d[i][j] < d[a][b])) {
            a = i;
            b = j;
          }
        }
      }
      heights.add(linkage == Linkage.WARD ? Math.sqrt(d[a][b]) : d[a][b]);
      merges.add(List.of(members.get(a), members.get(b)));
      update(a, b);
      List<Integer> joined = new ArrayList<>(members.get(a));
      joined.addAll(members.get(b));
      members.set(a, joined.stream().sorted().toList());
      members.set(b, null);
    }

    private void update(int a, int b) {
      double na = members.get(a).size();
      double nb = members.get(b).size();
      for (int k = 0; k < d.length; k++) {
        if (members.get(k) == null || k == a || k == b) {
          continue;
        }
        double nk = members.get(k).size();
        double to = linkage == Linkage.COMPLETE ? Math.max(d[a][k], d[b][k])
            : ((na + nk) * d[a][k] + (nb + nk) * d[b][k] - nk * d[a][b]) / (na + nb + nk);
        d[a][k] = to;
        d[k][a] = to;
      }
    }
  }
}
