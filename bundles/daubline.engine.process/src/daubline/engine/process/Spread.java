package daubline.engine.process;

/**
 * A number that is not known exactly, told by its middle and its 5 and 95 % points.
 *
 * @param median middle value
 * @param low 5 % point
 * @param high 95 % point
 * @param shape how it is spread between
 */
public record Spread(double median, double low, double high, Shape shape) {

  private static final double Z95 = 1.6448536269514722;

  /** How a number is spread. */
  public enum Shape {
    /** No spread. */
    EXACT,
    /** Normal. */
    NORMAL,
    /** Normal in the logarithm; for positive numbers known to a factor. */
    LOG_NORMAL,
    /** Anything between two limits is equally likely; low and high are the limits. */
    EVEN
  }

  public Spread {
    if (!(low <= median && median <= high)) {
      throw new IllegalArgumentException("a spread needs low ≤ median ≤ high, has " + low + ", " + median + ", " + high);
    }
    if (shape == Shape.LOG_NORMAL && !(low > 0)) {
      throw new IllegalArgumentException("a number known to a factor must be positive, its low end is " + low);
    }
  }

  /** A number taken as exact. */
  public static Spread exact(double value) {
    return new Spread(value, value, value, Shape.EXACT);
  }

  /** A normal number with a standard uncertainty. */
  public static Spread normal(double mean, double sigma) {
    return new Spread(mean, mean - Z95 * sigma, mean + Z95 * sigma, Shape.NORMAL);
  }

  /** A positive number known to a relative standard uncertainty. */
  public static Spread relative(double median, double sigma) {
    double factor = Math.exp(Z95 * sigma);
    return new Spread(median, median / factor, median * factor, Shape.LOG_NORMAL);
  }

  /** Anything between two limits. */
  public static Spread even(double low, double high) {
    return new Spread((low + high) / 2, low, high, Shape.EVEN);
  }

  /**
   * The value for a uniform and a standard normal random number; only one of them is used.
   *
   * @param uniform 0 to 1
   * @param normal standard normal
   */
  public double draw(double uniform, double normal) {
    return switch (shape) {
      case EXACT -> median;
      case NORMAL -> median + normal * (normal < 0 ? median - low : high - median) / Z95;
      case LOG_NORMAL -> median * Math.exp(normal * Math.log(normal < 0 ? median / low : high / median) / Z95);
      case EVEN -> low + uniform * (high - low);
    };
  }
}
