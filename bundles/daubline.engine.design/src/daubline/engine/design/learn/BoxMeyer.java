package daubline.engine.design.learn;

import daubline.engine.stats.Cholesky;
import daubline.engine.stats.Matrices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The probability that each factor is active in an aliased two-level screen (Box &amp; Meyer 1993, J. Quality Technology
 * 25, 94–105). Every set of active factors is a model with their main effects and interactions; a factor's probability is
 * the sum over the models that hold it. The probabilities rest on the prior and say which sets the data cannot separate.
 *
 * @param models the models, the most probable first
 * @param active the probability of each factor
 */
public record BoxMeyer(List<Candidate> models, double[] active) {

  private static final int MOST_MODELS = 20_000;

  /**
   * What is believed beforehand.
   *
   * @param share the share of factors thought active, 0 to 1; 0.25 is usual
   * @param size how large an active effect is, in standard deviations of a trial; 2 is usual
   * @param mostFactors the most factors active together
   * @param mostOrder the most factors in one interaction
   */
  public record Prior(double share, double size, int mostFactors, int mostOrder) {

    /** The values used in the published examples. */
    public static final Prior USUAL = new Prior(0.25, 2, 5, 3);

    public Prior {
      if (!(share > 0 && share < 1 && size > 0) || mostFactors < 1 || mostOrder < 1) {
        throw new IllegalArgumentException("the prior needs a share between 0 and 1, a size above zero, and at least one "
            + "factor and order");
      }
    }
  }

  /**
   * One set of active factors.
   *
   * @param factors the indices of its factors
   * @param probability its probability
   * @param variance the variance between trials under it
   */
  public record Candidate(int[] factors, double probability, double variance) {
  }

  /**
   * The probabilities.
   *
   * @param x the settings, −1 and 1 (0 in the middle), by trial
   * @param given columns that are in every model beside the mean, such as a block; may have no columns
   * @param y the outcomes
   * @throws IllegalArgumentException when there are too many models
   */
  public static BoxMeyer of(double[][] x, double[][] given, double[] y, Prior prior) {
    int k = x[0].length;
    List<int[]> sets = sets(k, Math.min(k, prior.mostFactors));
    double[][] base = columns(x, given, new int[0], prior.mostOrder);
    double[] none = penalised(base, y, prior.size);
    double[] logs = new double[sets.size()];
    double[] variances = new double[sets.size()];
    for (int m = 0; m < logs.length; m++) {
      double[][] xm = columns(x, given, sets.get(m), prior.mostOrder);
      double[] fit = penalised(xm, y, prior.size);
      int effects = xm[0].length - base[0].length;
      logs[m] = sets.get(m).length * Math.log(prior.share / (1 - prior.share)) - effects * Math.log(prior.size)
          + (none[0] - fit[0]) / 2 - (y.length - 1) / 2.0 * Math.log(fit[1] / none[1]);
      variances[m] = fit[1] / (y.length - 1);
    }
    return normalised(sets, logs, variances, k);
  }

  private static int width(double[][] given) {
    return given.length == 0 ? 0 : given[0].length;
  }

  private static BoxMeyer normalised(List<int[]> sets, double[] logs, double[] variances, int k) {
    double most = java.util.Arrays.stream(logs).max().orElseThrow();
    double sum = java.util.Arrays.stream(logs).map(l -> Math.exp(l - most)).sum();
    List<Candidate> models = new ArrayList<>();
    double[] active = new double[k];
    for (int m = 0; m < logs.length; m++) {
      double probability = Math.exp(logs[m] - most) / sum;
      models.add(new Candidate(sets.get(m), probability, variances[m]));
      for (int f : sets.get(m)) {
        active[f] += probability;
      }
    }
    models.sort(Comparator.comparingDouble(c -> -c.probability));
    return new BoxMeyer(List.copyOf(models), active);
  }

  private static List<int[]> sets(int k, int most) {
    if (k > 24) {
      throw new IllegalArgumentException("the activity probabilities take at most 24 factors, not " + k);
    }
    List<int[]> sets = IntStream.range(0, 1 << k).filter(s -> Integer.bitCount(s) <= most)
        .mapToObj(s -> IntStream.range(0, k).filter(f -> (s >> f & 1) == 1).toArray()).toList();
    if (sets.size() > MOST_MODELS) {
      throw new IllegalArgumentException(sets.size() + " sets of " + most + " of " + k + " factors are too many; allow "
          + "fewer active factors");
    }
    return sets;
  }

  /** The mean, the given columns, and the products of up to so many of these factors. */
  public static double[][] columns(double[][] x, double[][] given, int[] factors, int mostOrder) {
    int[] products = IntStream.range(1, 1 << factors.length).filter(s -> Integer.bitCount(s) <= mostOrder).boxed()
        .sorted(Comparator.<Integer>comparingInt(Integer::bitCount).thenComparingInt(s -> s)).mapToInt(s -> s).toArray();
    int w = width(given);
    double[][] columns = new double[x.length][1 + w + products.length];
    for (int i = 0; i < x.length; i++) {
      columns[i][0] = 1;
      for (int g = 0; g < w; g++) {
        columns[i][1 + g] = given[i][g];
      }
      for (int c = 0; c < products.length; c++) {
        double v = 1;
        for (int f = 0; f < factors.length; f++) {
          v *= (products[c] >> f & 1) == 1 ? x[i][factors[f]] : 1;
        }
        columns[i][1 + w + c] = v;
      }
    }
    return columns;
  }

  /** Γ + XᵀX with a prior of the given size on every column but the mean. */
  public static double[][] penalisedSquare(double[][] x, double size) {
    double[][] m = Matrices.square(x);
    for (int j = 1; j < m.length; j++) {
      m[j][j] += 1 / (size * size);
    }
    return m;
  }

  /** The log determinant of Γ + XᵀX, and the squares of the residuals plus the penalty. */
  private static double[] penalised(double[][] x, double[] y, double size) {
    Cholesky m = Cholesky.of(penalisedSquare(x, size));
    double[] xy = Matrices.times(Matrices.transpose(x), y);
    return new double[] {m.logDeterminant(), Matrices.dot(y, y) - Matrices.dot(xy, m.solve(xy))};
  }
}
