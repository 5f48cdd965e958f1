package daubline.engine.stats;

/**
 * Share of draws in which each alternative takes each rank (SMAA-2, Lahdelma &amp; Salminen 2001, Operations Research 49,
 * 444–454). Equal values share their ranks.
 */
public final class RankAcceptability {

  private static final double[] NONE = {};

  private final double[][] values;
  private final double[][] acceptability;
  private final double[][] first;

  private RankAcceptability(double[][] values) {
    this.values = values;
    this.acceptability = new double[values.length][values.length];
    this.first = new double[values.length][values[0].length];
    for (int m = 0; m < values[0].length; m++) {
      count(m);
    }
    for (double[] row : acceptability) {
      for (int rank = 0; rank < row.length; rank++) {
        row[rank] /= values[0].length;
      }
    }
  }

  /**
   * Ranks alternatives in every draw, the highest value first.
   *
   * @param values value of each alternative (first index) in each draw (second index); at least one of each
   */
  public static RankAcceptability of(double[][] values) {
    return new RankAcceptability(values);
  }

  private void count(int m) {
    int n = values.length;
    int[] order = order(m);
    for (int start = 0; start < n;) {
      int end = start;
      while (end < n && values[order[end]][m] == values[order[start]][m]) {
        end++;
      }
      double share = 1.0 / (end - start);
      for (int i = start; i < end; i++) {
        for (int rank = start; rank < end; rank++) {
          acceptability[order[i]][rank] += share;
        }
        first[order[i]][m] = start == 0 ? share : 0;
      }
      start = end;
    }
  }

  /** The alternatives of one draw, the highest value first; by insertion, since they are few. */
  private int[] order(int m) {
    int[] order = new int[values.length];
    for (int a = 0; a < order.length; a++) {
      int place = a;
      while (place > 0 && values[order[place - 1]][m] < values[a][m]) {
        order[place] = order[place - 1];
        place--;
      }
      order[place] = a;
    }
    return order;
  }

  /** Share of draws in which an alternative has the highest value; equal ones share it. */
  public static double first(double[][] values, int alternative) {
    double sum = 0;
    for (int m = 0; m < values[0].length; m++) {
      int above = 0;
      int equal = 0;
      for (double[] row : values) {
        above += row[m] > values[alternative][m] ? 1 : 0;
        equal += row[m] == values[alternative][m] ? 1 : 0;
      }
      sum += above == 0 ? 1.0 / equal : 0;
    }
    return sum / values[0].length;
  }

  /** Share of draws in which an alternative takes each rank, first rank first. */
  public double[] acceptability(int alternative) {
    return acceptability[alternative].clone();
  }

  /** Probability that one alternative has a higher value than another; equal values count half. */
  public double win(int alternative, int other) {
    double wins = 0;
    for (int m = 0; m < values[0].length; m++) {
      double a = values[alternative][m];
      double b = values[other][m];
      wins += a > b ? 1 : a == b ? 0.5 : 0;
    }
    return wins / values[0].length;
  }

  /**
   * Mean of the weights under which an alternative comes first; empty when it never does.
   *
   * @param weights weights of each draw
   */
  public double[] centralWeights(int alternative, double[][] weights) {
    double[] mean = new double[weights[0].length];
    double sum = 0;
    for (int m = 0; m < weights.length; m++) {
      double share = first[alternative][m];
      sum += share;
      for (int c = 0; share > 0 && c < mean.length; c++) {
        mean[c] += share * weights[m][c];
      }
    }
    if (sum == 0) {
      return NONE;
    }
    for (int c = 0; c < mean.length; c++) {
      mean[c] /= sum;
    }
    return mean;
  }

  /**
   * Exact share of uniform weights under which one alternative comes before another: Σ over d &gt; 0 of
   * dⁿ⁻¹ / ∏(d − other d), the volume of a simplex cut by a plane.
   *
   * @param differences value difference on each criterion, all distinct
   */
  public static double exactWin(double[] differences) {
    double sum = 0;
    for (int i = 0; i < differences.length; i++) {
      double product = 1;
      for (int j = 0; j < differences.length; j++) {
        product *= j == i ? 1 : differences[i] / (differences[i] - differences[j]);
      }
      sum += differences[i] > 0 ? product : 0;
    }
    return sum;
  }
}
