package daubline.engine.inference.kernel;

import daubline.engine.stats.ChiSquared;
import daubline.engine.stats.Composition;
import daubline.engine.stats.Gaussian;
import daubline.engine.stats.ShareDistance;
import java.util.Arrays;
import java.util.List;

/**
 * Shares over classes against shares over the same classes by the Hellinger distance H: exp(−m²/(2(K−1))) with
 * m² = 8·n·H², n the number of independent fragments or batches, never kilograms. True zeros are allowed.
 */
public final class SharesKernel implements Kernel {

  private final double[] evidence;
  private final double[] found;
  private final double[] relative;
  private final double number;

  /**
   * A kernel.
   *
   * @param evidence mass of each class, at least two classes, sum greater than zero
   * @param found mass of each class of the trial, sum greater than zero
   * @param relative relative standard uncertainty of each of the trial's masses
   * @param number effective number of independent fragments of both sides together
   */
  public SharesKernel(double[] evidence, double[] found, double[] relative, double number) {
    this.evidence = evidence.clone();
    this.found = found.clone();
    this.relative = relative.clone();
    this.number = number;
  }

  /** Effective number from the numbers of both sides. */
  public static double effective(double evidence, double found) {
    return 1 / (1 / evidence + 1 / found);
  }

  private int degrees() {
    return evidence.length - 1;
  }

  private double squared(double[] masses) {
    return 8 * number * (1 - ShareDistance.overlap(evidence, masses));
  }

  @Override
  public double log() {
    return -squared(found) / (2 * degrees());
  }

  @Override
  public double compatibility() {
    return ChiSquared.upper(squared(found), degrees());
  }

  @Override
  public double sigmas() {
    double p = compatibility();
    return p >= 1 ? 0 : Gaussian.deviate(p);
  }

  @Override
  public void logs(Draws draws, double[] into) {
    if (Arrays.stream(relative).allMatch(r -> r == 0)) {
      Arrays.fill(into, log());
      return;
    }
    double[] shares = Composition.closure(evidence);
    double[][] roots = draws.kept(new Roots(found, relative), () -> roots(draws, into.length));
    Arrays.fill(into, 0);
    for (int k = 0; k < found.length; k++) {
      add(into, Math.sqrt(shares[k]), roots[k]);
    }
    double factor = 8 * number / (2 * degrees());
    for (int m = 0; m < into.length; m++) {
      into[m] = -factor * Math.max(0, 1 - into[m]);
    }
  }

  private static void add(double[] sums, double weight, double[] values) {
    for (int m = 0; m < sums.length; m++) {
      sums[m] += weight * values[m];
    }
  }

  /** What the roots of the trial's drawn shares depend on. */
  private record Roots(List<Double> found, List<Double> relative) {
    Roots(double[] found, double[] relative) {
      this(Arrays.stream(found).boxed().toList(), Arrays.stream(relative).boxed().toList());
    }
  }

  /** Square root of the trial's share of each class in each draw: a mass varies by exp(r·z), its root by exp(r·z/2). */
  private double[][] roots(Draws draws, int count) {
    double[][] roots = new double[found.length][count];
    double[] sums = new double[count];
    for (int k = 0; k < found.length; k++) {
      double[] z = draws.normals(k);
      for (int m = 0; m < count; m++) {
        roots[k][m] = Math.sqrt(found[k]) * (relative[k] > 0 ? Math.exp(relative[k] / 2 * z[m]) : 1);
        sums[m] += roots[k][m] * roots[k][m];
      }
    }
    for (double[] row : roots) {
      for (int m = 0; m < count; m++) {
        row[m] /= Math.sqrt(sums[m]);
      }
    }
    return roots;
  }

  @Override
  public void reproduce(Draws draws, double[] into) {
    Arrays.fill(into, 0);
    for (int k = 0; k < degrees(); k++) {
      double[] z = draws.normals(k);
      for (int m = 0; m < into.length; m++) {
        into[m] -= z[m] * z[m] / (2 * degrees());
      }
    }
  }
}
