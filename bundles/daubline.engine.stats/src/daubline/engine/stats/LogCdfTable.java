package daubline.engine.stats;

/**
 * Logarithm of the normal distribution by interpolation, for inner loops: cubic Hermite pieces of 1/32 between −9 and 9,
 * exact outside; within 1e-9 of {@link Gaussian#logCdf}.
 */
public final class LogCdfTable {

  private static final double END = 9;
  private static final int STEPS = 32;
  private static final double[] VALUE = new double[(int) (2 * END * STEPS) + 2];
  private static final double[] SLOPE = new double[VALUE.length];

  static {
    for (int i = 0; i < VALUE.length; i++) {
      double z = i / (double) STEPS - END;
      VALUE[i] = Gaussian.logCdf(z);
      SLOPE[i] = Math.exp(-z * z / 2 - VALUE[i]) / Math.sqrt(2 * Math.PI) / STEPS;
    }
  }

  private LogCdfTable() {
  }

  /** Logarithm of the probability of a value up to z. */
  public static double at(double z) {
    if (!(z > -END)) {
      return Gaussian.logCdf(z);
    }
    if (z >= END) {
      return 0;
    }
    double position = (z + END) * STEPS;
    int i = (int) position;
    double t = position - i;
    double rise = VALUE[i + 1] - VALUE[i];
    double a = SLOPE[i] - rise;
    double b = rise - SLOPE[i + 1];
    return VALUE[i] + t * (rise + (1 - t) * ((1 - t) * a + t * b));
  }
}
