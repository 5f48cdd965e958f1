package daubline.engine.stats;

/**
 * The functions that make normal deviates of uniform ones, by power series without a branch: the same bits on every machine,
 * within a few units of the last digit, and faster than the library, which must take any argument.
 */
final class Elementary {

  private static final double LN2 = Math.log(2);
  /** What makes the exponent of a number whose mantissa lies between √½ and √2. */
  private static final long ROOT_HALF = 0x3FE6A09E667F3BCDL;
  private static final double[] COSINE = {1, 0, -1, 0, 1};
  private static final double[] SINE = {0, 1, 0, -1, 0};

  private Elementary() {
  }

  /** Natural logarithm of a number above 1e-300; ln x = k·ln 2 + 2·artanh((m − 1)/(m + 1)). */
  static double log(double x) {
    long bits = Double.doubleToRawLongBits(x);
    long exponent = bits - ROOT_HALF >> 52;
    double m = Double.longBitsToDouble(bits - (exponent << 52));
    double s = (m - 1) / (m + 1);
    double y = s * s;
    double sum = 1.0 / 23;
    sum = sum * y + 1.0 / 21;
    sum = sum * y + 1.0 / 19;
    sum = sum * y + 1.0 / 17;
    sum = sum * y + 1.0 / 15;
    sum = sum * y + 1.0 / 13;
    sum = sum * y + 1.0 / 11;
    sum = sum * y + 1.0 / 9;
    sum = sum * y + 1.0 / 7;
    sum = sum * y + 1.0 / 5;
    sum = sum * y + 1.0 / 3;
    return exponent * LN2 + (2 * s + 2 * s * y * sum);
  }

  /**
   * Box and Muller's pair of normal deviates.
   *
   * @param first uniform, 0 to 1, both excluded
   * @param turn uniform, 0 to 1: the direction as share of a full turn
   * @param into filled at an index and the one after it
   */
  static void normals(double first, double turn, double[] into, int at) {
    double radius = Math.sqrt(-2 * log(first));
    int quarter = (int) (4 * turn + 0.5);
    double x = 2 * Math.PI * (turn - 0.25 * quarter);
    double y = x * x;
    double sine = x + x * y * sine(y);
    double cosine = 1 - 0.5 * y + y * y * cosine(y);
    into[at] = radius * (cosine * COSINE[quarter] - sine * SINE[quarter]);
    into[at + 1] = radius * (sine * COSINE[quarter] + cosine * SINE[quarter]);
  }

  /** Taylor's series of (sin x − x)/x³ up to an eighth of a turn; the rest is below (π/4)¹⁷/17! = 5e-17. */
  private static double sine(double y) {
    double sum = -1.0 / 1307674368000L;
    sum = sum * y + 1.0 / 6227020800L;
    sum = sum * y - 1.0 / 39916800;
    sum = sum * y + 1.0 / 362880;
    sum = sum * y - 1.0 / 5040;
    sum = sum * y + 1.0 / 120;
    return sum * y - 1.0 / 6;
  }

  /** Taylor's series of (cos x − 1 + x²/2)/x⁴ up to an eighth of a turn; the rest is below (π/4)¹⁸/18! = 2e-18. */
  private static double cosine(double y) {
    double sum = 1.0 / 20922789888000L;
    sum = sum * y - 1.0 / 87178291200L;
    sum = sum * y + 1.0 / 479001600;
    sum = sum * y - 1.0 / 3628800;
    sum = sum * y + 1.0 / 40320;
    sum = sum * y - 1.0 / 720;
    return sum * y + 1.0 / 24;
  }
}
