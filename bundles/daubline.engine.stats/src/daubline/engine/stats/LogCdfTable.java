package daubline.engine.stats;

/**
 * Logarithm of the normal distribution by interpolation, for inner loops: cubic Hermite pieces of 1/32 between −9 and 9,
 * exact outside; within 1e-9 of {@link Gaussian#logCdf}.
 */
public final class LogCdfTable {

  private static final double END = 9;
  private static final int STEPS = 32;
  /** Four coefficients of each piece, of the third power first. */
  private static final double[] PIECES = new double[4 * (int) (2 * END * STEPS)];

  static {
    for (int i = 0; i < PIECES.length / 4; i++) {
      double value = Gaussian.logCdf(i / (double) STEPS - END);
      double rise = Gaussian.logCdf((i + 1) / (double) STEPS - END) - value;
      double slope = slope(i);
      double a = slope - rise;
      double b = rise - slope(i + 1);
      PIECES[4 * i] = a - b;
      PIECES[4 * i + 1] = b - 2 * a;
      PIECES[4 * i + 2] = slope;
      PIECES[4 * i + 3] = value;
    }
  }

  private LogCdfTable() {
  }

  private static double slope(int i) {
    double z = i / (double) STEPS - END;
    return Math.exp(-z * z / 2 - Gaussian.logCdf(z)) / Math.sqrt(2 * Math.PI) / STEPS;
  }

  /** Logarithm of the probability of a value up to z. */
  public static double at(double z) {
    if (!(z > -END)) {
      return Gaussian.logCdf(z);
    }
    return z >= END ? 0 : inside(z);
  }

  private static double inside(double z) {
    double position = (z + END) * STEPS;
    int i = (int) position;
    double t = position - i;
    int p = 4 * i;
    return ((PIECES[p] * t + PIECES[p + 1]) * t + PIECES[p + 2]) * t + PIECES[p + 3];
  }

  /** Adds weight × max(log probability up to start + step·z, floor) of every z to sums. */
  public static void addTo(double[] sums, double weight, double floor, double start, double step, double[] z) {
    for (int m = 0; m < sums.length; m++) {
      double x = start + step * z[m];
      sums[m] += weight * Math.max(x > -END && x < END ? inside(x) : at(x), floor);
    }
  }
}
