package daubline.engine.design.learn;

import daubline.engine.stats.RandomStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How often an effect as large appears when the settings are dealt out anew as the plan could have dealt them: within
 * furnaces for what changes with the trial, between furnaces of equal size for what changes with the furnace. Counted in
 * full while there are at most 200 000 ways, drawn otherwise (Edgington 1980; from memory).
 *
 * @param p the share of ways with an effect at least as large
 * @param floor the smallest share that these trials could ever give
 * @param ways how many ways were looked at
 * @param complete whether these are all there are
 */
public record Permutation(double p, double floor, long ways, boolean complete) {

  private static final long MOST = 200_000;

  /**
   * The test of one column.
   *
   * @param y the outcomes
   * @param x the settings of the column
   * @param furnaces the furnace of each trial; equal numbers everywhere when the trials were dealt out freely
   * @param draws how many ways are drawn when there are too many to count
   */
  public static Permutation of(double[] y, double[] x, int[] furnaces, int draws, long seed) {
    List<double[][]> blocks = constantInside(x, furnaces) ? between(y, x, furnaces) : within(y, x, furnaces);
    return new Walk(blocks).run(draws, seed);
  }

  private static boolean constantInside(double[] x, int[] furnaces) {
    for (int i = 0; i < x.length; i++) {
      for (int j = 0; j < i; j++) {
        if (furnaces[i] == furnaces[j] && Math.abs(x[i] - x[j]) > 1e-12) {
          return false;
        }
      }
    }
    return true;
  }

  private static Map<Integer, List<Integer>> members(int[] furnaces) {
    Map<Integer, List<Integer>> members = new LinkedHashMap<>();
    for (int i = 0; i < furnaces.length; i++) {
      members.computeIfAbsent(furnaces[i], k -> new ArrayList<>()).add(i);
    }
    return members;
  }

  private static List<double[][]> within(double[] y, double[] x, int[] furnaces) {
    List<double[][]> blocks = new ArrayList<>();
    for (List<Integer> trials : members(furnaces).values()) {
      blocks.add(new double[][] {trials.stream().mapToDouble(i -> y[i]).toArray(), trials.stream().mapToDouble(i -> x[i]).toArray()});
    }
    return blocks;
  }

  /** Furnaces of the same number of trials form a block in which totals and settings can be dealt out. */
  private static List<double[][]> between(double[] y, double[] x, int[] furnaces) {
    Map<Integer, List<double[]>> bySize = new LinkedHashMap<>();
    for (List<Integer> trials : members(furnaces).values()) {
      double total = trials.stream().mapToDouble(i -> y[i]).sum();
      bySize.computeIfAbsent(trials.size(), k -> new ArrayList<>()).add(new double[] {total, x[trials.get(0)]});
    }
    return bySize.values().stream().map(b -> new double[][] {b.stream().mapToDouble(v -> v[0]).toArray(),
        b.stream().mapToDouble(v -> v[1]).toArray()}).toList();
  }

  /** Goes through the ways of dealing out the settings. */
  private static final class Walk {
    private final List<double[][]> blocks;
    private final double observed;
    private final double tolerance;
    private long ways;
    private long asLarge;
    private double largest = -1;
    private long atLargest;

    Walk(List<double[][]> given) {
      blocks = given.stream().map(Walk::centred).toList();
      observed = blocks.stream().mapToDouble(b -> daubline.engine.stats.Matrices.dot(b[0], b[1])).sum();
      double scale = blocks.stream().mapToDouble(b -> Arrays.stream(b[0]).map(Math::abs).sum()
          * Arrays.stream(b[1]).map(Math::abs).max().orElse(0)).sum();
      tolerance = 1e-12 * scale;
    }

    /** Outcomes about their mean, so that what settings have in common does not count; settings sorted. */
    private static double[][] centred(double[][] block) {
      double mean = Arrays.stream(block[0]).average().orElse(0);
      return new double[][] {Arrays.stream(block[0]).map(v -> v - mean).toArray(), block[1].clone()};
    }

    Permutation run(int draws, long seed) {
      double number = blocks.stream().mapToDouble(Walk::arrangements).reduce(1, (a, b) -> a * b);
      if (number <= MOST) {
        all(0, 0);
        return new Permutation(asLarge / (double) ways, atLargest / (double) ways, ways, true);
      }
      RandomStream random = new RandomStream(RandomStream.key(seed, "permutation"));
      for (int d = 0; d < draws; d++) {
        count(blocks.stream().mapToDouble(b -> dealt(b, random)).sum());
      }
      return new Permutation((asLarge + 1.0) / (draws + 1.0), 1.0 / (draws + 1.0), draws, false);
    }

    private static double arrangements(double[][] block) {
      double count = 1;
      Map<Double, Integer> seen = new LinkedHashMap<>();
      for (int i = 0; i < block[1].length; i++) {
        count = count * (i + 1) / seen.merge(block[1][i], 1, Integer::sum);
      }
      return count;
    }

    private void all(int block, double sum) {
      if (block == blocks.size()) {
        count(sum);
        return;
      }
      double[] left = blocks.get(block)[1].clone();
      Arrays.sort(left);
      deal(block, 0, left, sum);
    }

    private void deal(int block, int trial, double[] left, double sum) {
      double[] y = blocks.get(block)[0];
      if (trial == y.length) {
        all(block + 1, sum);
        return;
      }
      for (int s = 0; s < left.length; s++) {
        if (s > 0 && left[s] == left[s - 1]) {
          continue;
        }
        double[] rest = new double[left.length - 1];
        System.arraycopy(left, 0, rest, 0, s);
        System.arraycopy(left, s + 1, rest, s, rest.length - s);
        deal(block, trial + 1, rest, sum + y[trial] * left[s]);
      }
    }

    private static double dealt(double[][] block, RandomStream random) {
      double[] x = block[1];
      double sum = 0;
      for (int i = x.length - 1; i >= 0; i--) {
        int j = random.below(i + 1);
        double swap = x[i];
        x[i] = x[j];
        x[j] = swap;
        sum += block[0][i] * x[i];
      }
      return sum;
    }

    private void count(double statistic) {
      double size = Math.abs(statistic);
      ways++;
      if (size >= Math.abs(observed) - tolerance) {
        asLarge++;
      }
      if (size > largest + tolerance) {
        largest = size;
        atLargest = 0;
      }
      if (size >= largest - tolerance) {
        atLargest++;
      }
    }
  }
}
