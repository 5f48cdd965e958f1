package daubline.engine.inference.kernel;

import daubline.engine.stats.ChiSquared;
import daubline.engine.stats.Gaussian;
import java.util.Arrays;
import java.util.List;

/**
 * Several parts of one criterion, such as the heights of a zone round the clock: the mean of their log agreements, and
 * their compatibilities combined by Fisher's method (Fisher 1932, −2 Σ ln p against chi-squared).
 */
public final class JointKernel implements Kernel {

  private final List<Kernel> parts;

  private JointKernel(List<Kernel> parts) {
    this.parts = List.copyOf(parts);
  }

  /** A kernel of one part or more. */
  public static Kernel of(List<Kernel> parts) {
    return parts.size() == 1 ? parts.get(0) : new JointKernel(parts);
  }

  @Override
  public double log() {
    return parts.stream().mapToDouble(Kernel::log).average().orElseThrow();
  }

  @Override
  public double sigmas() {
    double p = compatibility();
    return p >= 1 ? 0 : Gaussian.deviate(p);
  }

  @Override
  public double compatibility() {
    double sum = 0;
    for (Kernel part : parts) {
      sum -= 2 * Math.log(part.compatibility());
    }
    return ChiSquared.upper(sum, 2 * parts.size());
  }

  @Override
  public void logs(Draws draws, double[] into) {
    average(draws, into, false);
  }

  @Override
  public void reproduce(Draws draws, double[] into) {
    average(draws, into, true);
  }

  private void average(Draws draws, double[] into, boolean reproduction) {
    double[] one = new double[into.length];
    Arrays.fill(into, 0);
    for (int k = 0; k < parts.size(); k++) {
      if (reproduction) {
        parts.get(k).reproduce(draws.part(k), one);
      } else {
        parts.get(k).logs(draws.part(k), one);
      }
      for (int m = 0; m < into.length; m++) {
        into[m] += one[m] / parts.size();
      }
    }
  }
}
