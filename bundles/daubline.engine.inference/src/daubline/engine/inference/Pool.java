package daubline.engine.inference;

/**
 * The weighted geometric pool of agreements: ln(S/100) = Σ w·ln max(g, ε) / Σ w over the criteria tested. A criterion that
 * is not tested leaves the pool and lowers the coverage; ε keeps one hard contradiction from erasing the rest.
 */
public final class Pool {

  /** Smallest agreement that enters the pool. */
  public static final double FLOOR = 1e-3;

  /** Logarithm of the smallest agreement that enters the pool. */
  public static final double LOG_FLOOR = Math.log(FLOOR);

  private Pool() {
  }

  /**
   * Pooled agreement, 0 to 100; NaN when nothing with a weight was tested.
   *
   * @param logs logarithm of each agreement, NaN when not tested
   * @param weights weight of each criterion
   */
  public static double score(double[] logs, double[] weights) {
    double sum = 0;
    double tested = 0;
    for (int c = 0; c < logs.length; c++) {
      if (!Double.isNaN(logs[c]) && weights[c] > 0) {
        sum += weights[c] * Math.max(logs[c], LOG_FLOOR);
        tested += weights[c];
      }
    }
    return tested > 0 ? 100 * Math.exp(sum / tested) : Double.NaN;
  }

  /**
   * Weight tested over weight of all criteria that could have been.
   *
   * @param recoverable whether the evidence of each criterion could have been recovered at all
   */
  public static double coverage(double[] logs, double[] weights, boolean[] recoverable) {
    double tested = 0;
    double all = 0;
    for (int c = 0; c < logs.length; c++) {
      tested += Double.isNaN(logs[c]) ? 0 : weights[c];
      all += recoverable[c] ? weights[c] : 0;
    }
    return all > 0 ? tested / all : 0;
  }

  /** Pooled agreement if every criterion that is not tested had this agreement; bounds in the manner of Manski 2003. */
  public static double bound(double[] logs, double[] weights, boolean[] recoverable, double untested) {
    double[] filled = logs.clone();
    for (int c = 0; c < filled.length; c++) {
      filled[c] = Double.isNaN(filled[c]) && recoverable[c] ? Math.log(untested) : filled[c];
    }
    double score = score(filled, weights);
    return Double.isNaN(score) ? 100 * untested : score;
  }
}
