package daubline.engine.design.catalogue;

import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Progress;
import daubline.engine.design.Starts;
import daubline.engine.stats.RandomStream;
import java.util.Comparator;
import java.util.List;

/**
 * Latin hypercubes whose closest two points lie far apart (maximin), by exchanging two entries of a column under a
 * falling threshold and Σ d^−p as the criterion (Morris &amp; Mitchell 1995; Dueck &amp; Scheuer 1990). Half the
 * searches begin at random, half at columns of equal steps (van Dam et al. 2007). All distances
 * are squared, on whole levels 0 … n − 1.
 */
public final class LatinHypercube {

  /** Half the powers p of the criterion, taken in turn by the starts: blunt ones travel, sharp ones settle. */
  private static final int[] POWERS = {10, 5, 20};

  /** How much above the best criterion a state may lie and still be looked at: its closest pair can be farther apart. */
  private static final double NEAR = 1.1;

  private final int n;
  private final int k;
  private final int[][] level;
  private final int[][] distance;
  private final RandomStream random;
  private final double[] weights;
  private double sum;
  private int[][] best;
  private double bestSum = Double.POSITIVE_INFINITY;
  private int bestDistance;

  private LatinHypercube(int n, int k, int power, RandomStream random) {
    this.n = n;
    this.k = k;
    this.random = random;
    level = new int[k][n];
    distance = new int[n][n];
    weights = new double[k * (n - 1) * (n - 1) + 1];
    double typical = k * n * (n + 1) / 6.0;
    for (int d = 1; d < weights.length; d++) {
      weights[d] = Math.pow(d / typical, -power);
    }
  }

  /**
   * Levels by point.
   *
   * @param levels for each point its level in each dimension
   * @param distance2 the squared distance of the closest two points, in levels
   */
  public record Points(int[][] levels, int distance2) {
  }

  /**
   * The best of several searches.
   *
   * @param n points, 2 or more
   * @param k dimensions, 1 or more
   * @param starts how many searches; each takes some milliseconds for twenty points
   */
  public static Points search(int n, int k, int starts, long seed, Progress progress) {
    if (n < 2 || k < 1) {
      throw new IllegalArgumentException("a Latin hypercube needs two points and one factor, not " + n + " and " + k);
    }
    long key = RandomStream.key(seed, "latin hypercube");
    return Starts.best(starts, i -> new LatinHypercube(n, k, POWERS[i % POWERS.length], new RandomStream(RandomStream.key(key, i))).run(i % 2 == 1),
        Comparator.comparingInt((Points p) -> -p.distance2), progress);
  }

  /** The design for these factors, from limit to limit; categories take the levels in turn. */
  public static Design design(List<Factor> factors, int n, int starts, long seed, Progress progress) {
    Points points = search(n, factors.size(), starts, seed, progress);
    double[][] settings = new double[n][factors.size()];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < factors.size(); j++) {
        settings[i][j] = place(factors.get(j), points.levels[i][j], n);
      }
    }
    return Design.independent("space-filling Latin hypercube of " + n + " trials", factors, settings,
        "Every setting of a factor is used once; no two trials are close.");
  }

  private static double place(Factor factor, int level, int n) {
    double[] codes = factor.codes();
    return codes.length == 0 ? -1 + 2.0 * level / (n - 1) : codes[level * codes.length / n];
  }

  private Points run(boolean periodic) {
    for (int[] column : level) {
      if (periodic) {
        fillByStep(column, 1 + random.below(n / 2), random.below(2) == 0);
      } else {
        shuffle(column);
      }
    }
    measure();
    keep();
    int moves = 60 * n * k;
    for (double threshold = 0.2; threshold > 1e-4 && n > 2; threshold *= 0.75) {
      for (int m = 0; m < moves; m++) {
        step(threshold);
      }
    }
    return new Points(byPoint(best), bestDistance);
  }

  private void shuffle(int[] column) {
    for (int i = 0; i < n; i++) {
      column[i] = i;
    }
    for (int i = n - 1; i > 0; i--) {
      swap(column, i, random.below(i + 1));
    }
  }

  /** Levels by equal steps, such as 0 3 6 1 4 7 2 5: many of the best small hypercubes are of this kind. */
  private void fillByStep(int[] column, int step, boolean falling) {
    int i = 0;
    for (int rest = 0; rest < step; rest++) {
      for (int v = falling ? step - 1 - rest : rest; v < n; v += step) {
        column[i++] = v;
      }
    }
  }

  private int[][] byPoint(int[][] columns) {
    int[][] points = new int[n][k];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < k; j++) {
        points[i][j] = columns[j][i];
      }
    }
    return points;
  }

  private void measure() {
    sum = 0;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        int d = 0;
        for (int[] column : level) {
          d += (column[i] - column[j]) * (column[i] - column[j]);
        }
        distance[i][j] = d;
        distance[j][i] = d;
        sum += weights[d];
      }
    }
  }

  private void step(double threshold) {
    int[] column = level[random.below(k)];
    int a = random.below(n);
    int b = random.below(n);
    double change = a == b ? 1 : change(column, a, b);
    if (change > threshold * sum) {
      return;
    }
    move(column, a, b);
    swap(column, a, b);
    sum += change;
    if (sum < bestSum * NEAR) {
      keep();
    }
  }

  private double change(int[] column, int a, int b) {
    double change = 0;
    int xa = column[a];
    int xb = column[b];
    for (int i = 0; i < n; i++) {
      if (i != a && i != b) {
        int da = (xa - column[i]) * (xa - column[i]);
        int db = (xb - column[i]) * (xb - column[i]);
        change += weights[distance[a][i] - da + db] - weights[distance[a][i]]
            + weights[distance[b][i] - db + da] - weights[distance[b][i]];
      }
    }
    return change;
  }

  private void move(int[] column, int a, int b) {
    for (int i = 0; i < n; i++) {
      if (i != a && i != b) {
        int da = (column[a] - column[i]) * (column[a] - column[i]);
        int db = (column[b] - column[i]) * (column[b] - column[i]);
        distance[a][i] += db - da;
        distance[i][a] = distance[a][i];
        distance[b][i] += da - db;
        distance[i][b] = distance[b][i];
      }
    }
  }

  private void keep() {
    int least = Integer.MAX_VALUE;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        least = Math.min(least, distance[i][j]);
      }
    }
    bestSum = Math.min(bestSum, sum);
    if (least > bestDistance) {
      bestDistance = least;
      best = java.util.Arrays.stream(level).map(int[]::clone).toArray(int[][]::new);
    }
  }

  private static void swap(int[] column, int a, int b) {
    int keep = column[a];
    column[a] = column[b];
    column[b] = keep;
  }
}
