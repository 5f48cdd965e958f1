package daubline.engine.inference;

import java.util.List;
import java.util.Map;

/**
 * How much criteria count. The weight of a group is shared among its criteria, so that ten oxides are not ten votes; a
 * criterion or group that is not named weighs 1, one with weight 0 counts for nothing.
 *
 * @param groups weight of each group
 * @param criteria weight of each criterion within its group, by id
 */
public record Weights(Map<Group, Double> groups, Map<String, Double> criteria) {

  public Weights {
    groups = Map.copyOf(groups);
    criteria = Map.copyOf(criteria);
    for (double weight : groups.values()) {
      check(weight);
    }
    for (double weight : criteria.values()) {
      check(weight);
    }
  }

  private static void check(double weight) {
    if (!(weight >= 0) || Double.isInfinite(weight)) {
      throw new IllegalArgumentException("A weight must be a number of zero or more, not " + weight);
    }
  }

  /** Every group counts the same, and every criterion the same within its group. */
  public static Weights equal() {
    return new Weights(Map.of(), Map.of());
  }

  /** The weight of each criterion in the order of the list; they sum to one, or are all zero. */
  public double[] shares(List<Criterion> list) {
    double[] within = list.stream().mapToDouble(c -> criteria.getOrDefault(c.id(), 1.0)).toArray();
    double[] shares = new double[within.length];
    double all = 0;
    for (Group group : Group.values()) {
      double sum = 0;
      for (int i = 0; i < within.length; i++) {
        sum += list.get(i).group() == group ? within[i] : 0;
      }
      double weight = groups.getOrDefault(group, 1.0);
      all += sum > 0 ? weight : 0;
      for (int i = 0; i < within.length; i++) {
        if (list.get(i).group() == group && sum > 0) {
          shares[i] = weight * within[i] / sum;
        }
      }
    }
    for (int i = 0; i < shares.length; i++) {
      shares[i] = all > 0 ? shares[i] / all : 0;
    }
    return shares;
  }
}
