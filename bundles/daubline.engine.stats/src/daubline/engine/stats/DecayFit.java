package daubline.engine.stats;

/**
 * How fast something goes, from a few observations: by the same share in each span of time, y = a·exp(−k·t), fitted as a
 * straight line of ln y, or by the same amount, y = a − k·t. Both by least squares; the range of the rate is the usual one of
 * Student's t. Source: Draper &amp; Smith, Applied Regression Analysis, ch. 1 (from memory); checked against R, lm.
 *
 * @param exponential whether a share goes in each span of time, otherwise an amount
 * @param start a, in the unit of y
 * @param rate k: share per unit of time (as −d ln y/dt), or amount per unit of time
 * @param error standard error of the rate; NaN with two observations
 * @param low lower end of the 95 % range of the rate; NaN with two observations
 * @param high upper end of it
 * @param observations how many observations there are
 * @param misses root of the mean squared miss, y observed less y fitted, over the degrees of freedom; NaN with two observations
 */
public record DecayFit(boolean exponential, double start, double rate, double error, double low, double high, int observations, double misses) {

  private static final double COVERAGE = 0.975;

  /**
   * Fits.
   *
   * @param t times, at least two that differ
   * @param y what was observed; above zero for the exponential
   */
  public static DecayFit of(double[] t, double[] y, boolean exponential) {
    double[][] x = new double[t.length][];
    double[] z = new double[t.length];
    for (int i = 0; i < t.length; i++) {
      if (!Double.isFinite(t[i]) || !Double.isFinite(y[i]) || exponential && !(y[i] > 0)) {
        throw new IllegalArgumentException("observation " + (i + 1) + ": " + y[i] + " at " + t[i]);
      }
      x[i] = new double[] {1, t[i]};
      z[i] = exponential ? Math.log(y[i]) : y[i];
    }
    LeastSquares.Fit fit = LeastSquares.fit(x, z);
    if (!fit.dependent().isEmpty()) {
      throw new IllegalArgumentException("needs two times that differ");
    }
    double a = exponential ? Math.exp(fit.coefficients()[0]) : fit.coefficients()[0];
    double rate = -fit.coefficients()[1];
    double error = fit.freedom() > 0 ? fit.standardError(1) : Double.NaN;
    double reach = fit.freedom() > 0 ? Student.quantile(COVERAGE, fit.freedom()) * error : Double.NaN;
    DecayFit raw = new DecayFit(exponential, a, rate, error, rate - reach, rate + reach, t.length, Double.NaN);
    return fit.freedom() > 0 ? new DecayFit(exponential, a, rate, error, rate - reach, rate + reach, t.length, raw.misses(t, y, fit.freedom())) : raw;
  }

  private double misses(double[] t, double[] y, int freedom) {
    double sum = 0;
    for (int i = 0; i < t.length; i++) {
      double miss = y[i] - at(t[i]);
      sum += miss * miss;
    }
    return Math.sqrt(sum / freedom);
  }

  /** What goes in one unit of time at a rate of this law: the share of what is left, 1 − exp(−k), or the amount. */
  public double goes(double k) {
    return exponential ? -Math.expm1(-k) : k;
  }

  /** What is left at a time. */
  public double at(double t) {
    return exponential ? start * Math.exp(-rate * t) : start - rate * t;
  }
}
