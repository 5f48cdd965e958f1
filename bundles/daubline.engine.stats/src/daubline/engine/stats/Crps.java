package daubline.engine.stats;

/** Continuous ranked probability score, a proper score of a forecast distribution (Gneiting &amp; Raftery 2007, JASA 102). */
public final class Crps {

  private Crps() {
  }

  /** Of a normal forecast when y is observed; in the unit of y, 0 is best. */
  public static double normal(double mean, double sigma, double y) {
    double z = (y - mean) / sigma;
    return sigma * (z * (2 * Gaussian.cdf(z) - 1) + 2 * Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI) - 1 / Math.sqrt(Math.PI));
  }
}
