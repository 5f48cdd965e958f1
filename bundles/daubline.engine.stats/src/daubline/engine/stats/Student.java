package daubline.engine.stats;

import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/** Quantiles for small samples. */
public final class Student {

  private Student() {
  }

  /** The value of Student's t below which this probability lies. */
  public static double quantile(double probability, double freedom) {
    return new TDistribution(freedom).inverseCumulativeProbability(probability);
  }

  /**
   * Coverage interval of a standard deviation estimated from normal values.
   *
   * @return lower and upper end
   */
  public static double[] sigmaInterval(double sigma, int freedom, double coverage) {
    ChiSquaredDistribution chi = new ChiSquaredDistribution(freedom);
    return new double[] {sigma * Math.sqrt(freedom / chi.inverseCumulativeProbability((1 + coverage) / 2)),
        sigma * Math.sqrt(freedom / chi.inverseCumulativeProbability((1 - coverage) / 2))};
  }
}
