package daubline.engine.stats;

import org.hipparchus.special.Gamma;

/** Counts over classes whose shares follow a Dirichlet distribution. */
public final class DirichletMultinomial {

  private DirichletMultinomial() {
  }

  /**
   * Logarithm of the probability of counts.
   *
   * @param counts number in each class
   * @param alpha parameters of the Dirichlet distribution, each greater than zero
   */
  public static double log(int[] counts, double[] alpha) {
    int n = 0;
    double total = 0;
    double log = 0;
    for (int k = 0; k < counts.length; k++) {
      n += counts[k];
      total += alpha[k];
      log += Gamma.logGamma(counts[k] + alpha[k]) - Gamma.logGamma(alpha[k]) - Gamma.logGamma(counts[k] + 1.0);
    }
    return log + Gamma.logGamma(n + 1.0) + Gamma.logGamma(total) - Gamma.logGamma(n + total);
  }

  /** The most probable counts of a given number, found by moving single pieces uphill. */
  public static int[] mode(int number, double[] alpha) {
    int[] counts = new int[alpha.length];
    double total = 0;
    int largest = 0;
    for (int k = 0; k < alpha.length; k++) {
      total += alpha[k];
      largest = alpha[k] > alpha[largest] ? k : largest;
    }
    int rest = number;
    for (int k = 0; k < alpha.length; k++) {
      counts[k] = (int) (number * alpha[k] / total);
      rest -= counts[k];
    }
    counts[largest] += rest;
    while (climb(counts, alpha)) {
      // each step raises the probability, so it ends
    }
    return counts;
  }

  private static boolean climb(int[] counts, double[] alpha) {
    for (int from = 0; from < counts.length; from++) {
      for (int to = 0; to < counts.length; to++) {
        // ratio of probabilities when one piece moves
        if (from != to && counts[from] > 0
            && (counts[to] + alpha[to]) * counts[from] > (counts[to] + 1.0) * (counts[from] - 1 + alpha[from]) * (1 + 1e-12)) {
          counts[from]--;
          counts[to]++;
          return true;
        }
      }
    }
    return false;
  }

  /** Logarithm of the density of the Dirichlet distribution. */
  public static double logDensity(double[] shares, double[] alpha) {
    double total = 0;
    double log = 0;
    for (int k = 0; k < shares.length; k++) {
      total += alpha[k];
      log += (alpha[k] - 1) * Math.log(shares[k]) - Gamma.logGamma(alpha[k]);
    }
    return log + Gamma.logGamma(total);
  }
}
