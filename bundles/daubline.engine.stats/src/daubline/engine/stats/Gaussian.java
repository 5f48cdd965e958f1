package daubline.engine.stats;

import org.hipparchus.special.Erf;

/**
 * The standard normal distribution, exact far into its tails. Complementary error function: rational approximations of
 * Cody 1969, Mathematics of Computation 23, 631–637, with the factor exp(−x²) kept apart.
 */
public final class Gaussian {

  private static final double[] A = {1.85777706184603153e-1, 3.16112374387056560, 1.13864154151050156e2,
      3.77485237685302021e2, 3.20937758913846947e3};
  private static final double[] B = {1, 2.36012909523441209e1, 2.44024637934444173e2, 1.28261652607737228e3,
      2.84423683343917062e3};
  private static final double[] C = {2.15311535474403846e-8, 5.64188496988670089e-1, 8.88314979438837594,
      6.61191906371416295e1, 2.98635138197400131e2, 8.81952221241769090e2, 1.71204761263407058e3,
      2.05107837782607147e3, 1.23033935479799725e3};
  private static final double[] D = {1, 1.57449261107098347e1, 1.17693950891312499e2, 5.37181101862009858e2,
      1.62138957456669019e3, 3.29079923573345963e3, 4.36261909014324716e3, 3.43936767414372164e3,
      1.23033935480374942e3};
  private static final double[] P = {1.63153871373020978e-2, 3.05326634961232344e-1, 3.60344899949804439e-1,
      1.25781726111229246e-1, 1.60837851487422766e-2, 6.58749161529837803e-4};
  private static final double[] Q = {1, 2.56852019228982242, 1.87295284992346725, 5.27905102951428412e-1,
      6.05183413124413191e-2, 2.33520497626869185e-3};
  private static final double INVERSE_ROOT_PI = 1 / Math.sqrt(Math.PI);

  private Gaussian() {
  }

  /** Probability of a value up to z. */
  public static double cdf(double z) {
    return z > 0 ? 1 - upper(z) : upper(-z);
  }

  /** Logarithm of the probability of a value up to z, finite for every finite z. */
  public static double logCdf(double z) {
    if (z > 0) {
      return Math.log1p(-upper(z));
    }
    double x = -z / Math.sqrt(2);
    return Math.log(scaledErfc(x) / 2) - x * x;
  }

  /** Logarithm of the probability between low and high; low below high. */
  public static double logBetween(double low, double high) {
    if (low + high > 0) {
      return logBetween(-high, -low);
    }
    double top = logCdf(high);
    return top + Math.log1p(-Math.exp(logCdf(low) - top));
  }

  /** Probability of a value at least this many standard deviations away on either side. */
  public static double twoSided(double z) {
    return Math.min(1, 2 * upper(Math.abs(z)));
  }

  /** The z that a two-sided probability belongs to, 0 or greater; infinite when the probability is 0. */
  public static double deviate(double twoSided) {
    return twoSided <= 0 ? Double.POSITIVE_INFINITY : Math.sqrt(2) * Erf.erfcInv(Math.min(1, twoSided));
  }

  /** The value below which this probability lies; probability between 0 and 1. */
  public static double quantile(double probability) {
    return -Math.sqrt(2) * Erf.erfcInv(2 * probability);
  }

  private static double upper(double z) {
    double x = z / Math.sqrt(2);
    return scaledErfc(x) * Math.exp(-x * x) / 2;
  }

  /** exp(x²)·erfc(x) for x of zero or more. */
  static double scaledErfc(double x) {
    if (x < 0.46875) {
      double y = x * x;
      return Math.exp(y) * (1 - x * ratio(A, B, y));
    }
    if (x <= 4) {
      return ratio(C, D, x);
    }
    double y = 1 / (x * x);
    return (INVERSE_ROOT_PI - y * ratio(P, Q, y)) / x;
  }

  private static double ratio(double[] numerator, double[] denominator, double x) {
    double top = 0;
    double bottom = 0;
    for (int i = 0; i < numerator.length; i++) {
      top = top * x + numerator[i];
      bottom = bottom * x + denominator[i];
    }
    return top / bottom;
  }
}
