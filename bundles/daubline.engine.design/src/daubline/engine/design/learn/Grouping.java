package daubline.engine.design.learn;

import java.util.LinkedHashMap;
import java.util.Map;

/** Trials in groups, standing for the matrix ZZᵀ that has ones where two trials share a group. */
final class Grouping {

  private final int[] of;
  private final int[] sizes;

  /** Groups by any numbers. */
  Grouping(int[] groups) {
    Map<Integer, Integer> index = new LinkedHashMap<>();
    of = new int[groups.length];
    for (int i = 0; i < of.length; i++) {
      of[i] = index.computeIfAbsent(groups[i], k -> index.size());
    }
    sizes = new int[index.size()];
    for (int g : of) {
      sizes[g]++;
    }
  }

  /** Every trial a group of its own. */
  static Grouping alone(int n) {
    return new Grouping(java.util.stream.IntStream.range(0, n).toArray());
  }

  boolean together(int i, int j) {
    return of[i] == of[j];
  }

  int largest() {
    return java.util.Arrays.stream(sizes).max().orElse(1);
  }

  /** ZZᵀA. */
  double[][] spread(double[][] a) {
    double[][] sums = new double[sizes.length][a[0].length];
    for (int i = 0; i < of.length; i++) {
      for (int j = 0; j < a[i].length; j++) {
        sums[of[i]][j] += a[i][j];
      }
    }
    double[][] spread = new double[of.length][];
    for (int i = 0; i < of.length; i++) {
      spread[i] = sums[of[i]].clone();
    }
    return spread;
  }

  /** vᵀZZᵀv. */
  double quadratic(double[] v) {
    double[] sums = new double[sizes.length];
    for (int i = 0; i < of.length; i++) {
      sums[of[i]] += v[i];
    }
    return daubline.engine.stats.Matrices.dot(sums, sums);
  }

  /** The trace of P ZZᵀ. */
  double trace(double[][] p) {
    double sum = 0;
    for (int i = 0; i < of.length; i++) {
      for (int j = 0; j < of.length; j++) {
        sum += of[i] == of[j] ? p[i][j] : 0;
      }
    }
    return sum;
  }

  /** The trace of P ZZᵀ P YYᵀ, with YYᵀ of the other groups and P symmetric. */
  double trace(double[][] p, Grouping other) {
    double[][] sums = new double[sizes.length][other.sizes.length];
    for (int i = 0; i < of.length; i++) {
      double[] row = sums[of[i]];
      for (int j = 0; j < of.length; j++) {
        row[other.of[j]] += p[i][j];
      }
    }
    return daubline.engine.stats.Matrices.trace(sums, sums);
  }
}
