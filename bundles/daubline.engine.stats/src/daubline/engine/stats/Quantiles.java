package daubline.engine.stats;

/** Quantiles of drawn values, interpolated between order statistics (definition 7 of Hyndman &amp; Fan 1996). */
public final class Quantiles {

  private Quantiles() {
  }

  /**
   * Quantiles of values without NaN; the values are left as they are.
   *
   * @param values at least one
   * @param probabilities 0 to 1, rising
   */
  public static double[] of(double[] values, double... probabilities) {
    return within(values.clone(), probabilities);
  }

  /** The same without a copy: the values are left in another order. */
  public static double[] within(double[] work, double... probabilities) {
    double[] quantiles = new double[probabilities.length];
    int from = 0;
    for (int q = 0; q < probabilities.length; q++) {
      double position = probabilities[q] * (work.length - 1);
      int below = (int) position;
      select(work, from, work.length - 1, below);
      double low = work[below];
      double high = below + 1 < work.length && position > below ? smallest(work, below + 1) : low;
      quantiles[q] = low + (position - below) * (high - low);
      from = below;
    }
    return quantiles;
  }

  private static double smallest(double[] work, int from) {
    double least = work[from];
    for (int i = from + 1; i < work.length; i++) {
      least = Math.min(least, work[i]);
    }
    return least;
  }

  /** Puts the k-th smallest of work[left..right] at k, smaller ones before it and larger ones after it. */
  private static void select(double[] work, int left, int right, int k) {
    int low = left;
    int high = right;
    while (high > low) {
      double pivot = middle(work[low], work[low + high >>> 1], work[high]);
      int less = below(work, low, high, pivot);
      if (k < less) {
        high = less - 1;
      } else {
        int equal = upTo(work, less, high, pivot);
        if (k < equal) {
          return;
        }
        low = equal;
      }
    }
  }

  /** Moves what is below the pivot to the front, without a branch to mispredict; the index after it. */
  private static int below(double[] work, int low, int high, double pivot) {
    int end = low;
    for (int i = low; i <= high; i++) {
      double v = work[i];
      work[i] = work[end];
      work[end] = v;
      end += v < pivot ? 1 : 0;
    }
    return end;
  }

  private static int upTo(double[] work, int low, int high, double pivot) {
    int end = low;
    for (int i = low; i <= high; i++) {
      double v = work[i];
      work[i] = work[end];
      work[end] = v;
      end += v <= pivot ? 1 : 0;
    }
    return end;
  }

  private static double middle(double a, double b, double c) {
    return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
  }
}
