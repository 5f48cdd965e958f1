package daubline.engine.stats;

/** Distances between two sets of shares over the same classes; shares may be zero and are scaled to sum to one. */
public final class ShareDistance {

  private ShareDistance() {
  }

  /** Bhattacharyya coefficient, the sum of the roots of the products; 1 when equal. */
  public static double overlap(double[] p, double[] q) {
    double[] a = Composition.closure(p);
    double[] b = Composition.closure(q);
    double sum = 0;
    for (int k = 0; k < a.length; k++) {
      sum += Math.sqrt(a[k] * b[k]);
    }
    return Math.min(1, sum);
  }

  /** Hellinger distance, 0 to 1. */
  public static double hellinger(double[] p, double[] q) {
    return Math.sqrt(1 - overlap(p, q));
  }

  /** Kullback–Leibler divergence of p from q in nats; infinite where q is zero and p is not. */
  public static double kullbackLeibler(double[] p, double[] q) {
    double[] a = Composition.closure(p);
    double[] b = Composition.closure(q);
    double sum = 0;
    for (int k = 0; k < a.length; k++) {
      sum += a[k] > 0 ? a[k] * Math.log(a[k] / b[k]) : 0;
    }
    return sum;
  }

  /** Jensen–Shannon divergence in nats, 0 to ln 2. */
  public static double jensenShannon(double[] p, double[] q) {
    double[] a = Composition.closure(p);
    double[] b = Composition.closure(q);
    double[] middle = new double[a.length];
    for (int k = 0; k < a.length; k++) {
      middle[k] = (a[k] + b[k]) / 2;
    }
    return (kullbackLeibler(a, middle) + kullbackLeibler(b, middle)) / 2;
  }

  /** Total variation distance, half the sum of absolute differences. */
  public static double totalVariation(double[] p, double[] q) {
    double[] a = Composition.closure(p);
    double[] b = Composition.closure(q);
    double sum = 0;
    for (int k = 0; k < a.length; k++) {
      sum += Math.abs(a[k] - b[k]) / 2;
    }
    return sum;
  }
}
