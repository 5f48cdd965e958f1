package daubline.engine.inference.kernel;

import daubline.engine.stats.Gaussian;
import daubline.engine.stats.RandomStream;
import java.util.Arrays;

/**
 * A word against words with probabilities: qᵀSπ over the largest (Sπ)ₖ, where π are the probabilities of the evidence, q
 * those of the trial and S how alike two words are.
 */
public final class WordKernel implements Kernel {

  private final double[] evidence;
  private final double[] found;
  private final double[] agreement;

  /**
   * A kernel.
   *
   * @param evidence probability of each word, summing to one
   * @param found probability of each word for the trial, summing to one
   * @param alike likeness of each pair of words, 1 on the diagonal
   */
  public WordKernel(double[] evidence, double[] found, double[][] alike) {
    this.evidence = evidence.clone();
    this.found = found.clone();
    this.agreement = new double[evidence.length];
    double top = 0;
    for (int k = 0; k < evidence.length; k++) {
      for (int j = 0; j < evidence.length; j++) {
        agreement[k] += alike[k][j] * evidence[j];
      }
      top = Math.max(top, agreement[k]);
    }
    for (int k = 0; k < evidence.length; k++) {
      agreement[k] = top > 0 ? agreement[k] / top : 1;
    }
  }

  /** Words that are either the same or not. */
  public static double[][] distinct(int words) {
    double[][] alike = new double[words][words];
    for (int k = 0; k < words; k++) {
      alike[k][k] = 1;
    }
    return alike;
  }

  /** Words in an order: neighbours are alike by exp(−steps / reach). */
  public static double[][] ordered(int words, double reach) {
    double[][] alike = new double[words][words];
    for (int k = 0; k < words; k++) {
      for (int j = 0; j < words; j++) {
        alike[k][j] = k == j ? 1 : Math.exp(-Math.abs(k - j) / reach);
      }
    }
    return alike;
  }

  @Override
  public double log() {
    double sum = 0;
    for (int k = 0; k < found.length; k++) {
      sum += found[k] * agreement[k];
    }
    return Math.log(Math.min(1, sum));
  }

  @Override
  public double sigmas() {
    double p = compatibility();
    return p >= 1 ? 0 : Gaussian.deviate(p);
  }

  @Override
  public double compatibility() {
    double sum = 0;
    for (int k = 0; k < found.length; k++) {
      sum += found[k] > 0 ? found[k] * asUnlikelyAs(k) : 0;
    }
    return Math.min(1, sum);
  }

  private double asUnlikelyAs(int word) {
    double sum = 0;
    for (int j = 0; j < evidence.length; j++) {
      sum += agreement[j] <= agreement[word] * (1 + 1e-12) ? evidence[j] : 0;
    }
    return sum;
  }

  @Override
  public void logs(Draws draws, double[] into) {
    if (isCertain(found)) {
      Arrays.fill(into, log());
    } else {
      fill(found, draws.uniforms(0), into);
    }
  }

  @Override
  public void addTo(Draws draws, double weight, double floor, double[] sums, double[] scratch) {
    if (!isCertain(found)) {
      Kernel.super.addTo(draws, weight, floor, sums, scratch);
      return;
    }
    double more = weight * Math.max(log(), floor);
    for (int m = 0; m < sums.length; m++) {
      sums[m] += more;
    }
  }

  @Override
  public void reproduce(Draws draws, double[] into) {
    fill(evidence, draws.uniforms(0), into);
  }

  private void fill(double[] probabilities, double[] u, double[] into) {
    double[] logs = Arrays.stream(agreement).map(Math::log).toArray();
    for (int m = 0; m < into.length; m++) {
      into[m] = logs[RandomStream.pick(probabilities, u[m])];
    }
  }

  private static boolean isCertain(double[] probabilities) {
    for (double p : probabilities) {
      if (p != 0 && p != 1) {
        return false;
      }
    }
    return true;
  }
}
