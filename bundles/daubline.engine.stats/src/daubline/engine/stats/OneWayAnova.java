package daubline.engine.stats;

import java.util.List;

/**
 * One-way analysis of variance. All values are first shifted by one of them, which is exact for values that share their
 * leading digits, and the sums of squares are taken about the means.
 *
 * @param between the sum of squares between groups
 * @param within the sum of squares within groups
 * @param betweenFreedom groups less one
 * @param withinFreedom values less groups
 */
public record OneWayAnova(double between, double within, int betweenFreedom, int withinFreedom) {

  /** The analysis of two or more groups. @throws IllegalArgumentException when a group is empty or none repeats */
  public static OneWayAnova of(List<double[]> groups) {
    int n = groups.stream().mapToInt(g -> g.length).sum();
    if (groups.size() < 2 || n <= groups.size() || groups.stream().anyMatch(g -> g.length == 0)) {
      throw new IllegalArgumentException("an analysis of variance needs two groups, none empty, and a repeat");
    }
    double shift = groups.get(0)[0];
    double total = 0;
    double[] means = new double[groups.size()];
    double within = 0;
    for (int g = 0; g < means.length; g++) {
      double[] values = groups.get(g);
      means[g] = mean(values, shift);
      total += means[g] * values.length;
      double rest = 0;
      for (double v : values) {
        double d = v - shift - means[g];
        within += d * d;
        rest += d;
      }
      within -= rest * rest / values.length;
    }
    double between = 0;
    for (int g = 0; g < means.length; g++) {
      between += groups.get(g).length * (means[g] - total / n) * (means[g] - total / n);
    }
    return new OneWayAnova(between, within, groups.size() - 1, n - groups.size());
  }

  private static double mean(double[] values, double shift) {
    double sum = 0;
    double lost = 0;
    for (double v : values) {
      double add = v - shift - lost;
      double next = sum + add;
      lost = next - sum - add;
      sum = next;
    }
    return sum / values.length;
  }

  /** The ratio of the mean squares. */
  public double f() {
    return between / betweenFreedom / (within / withinFreedom);
  }
}
