package daubline.engine.process;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * First-order Sobol' indices from draws that exist already: variance of the class means over total variance, the draws
 * sorted by the input into classes of equal size, less what chance alone would give.
 *
 * <p>Source: correlation ratio as estimator of the first-order index, E. Plischke, E. Borgonovo, C. Smith, Eur. J. Oper.
 * Res. 226 (2013) 536 (from memory).
 */
public final class InputShares {

  private InputShares() {
  }

  /** The share below which an index of so many draws may be chance alone: three standard deviations of it. */
  static double chance(int draws) {
    return 3 * Math.sqrt(2.0 * (classes(draws) - 1)) / Math.max(1, draws - 1);
  }

  private static int classes(int n) {
    return (int) Math.clamp(Math.round(Math.sqrt(n) / 2), 2, 40);
  }

  /**
   * The index of one input, 0 to 1.
   *
   * @param input its values by draw
   * @param output the output by draw, as long; NaN draws are left out
   */
  public static double firstOrder(double[] input, double[] output) {
    Integer[] order = IntStream.range(0, input.length).filter(i -> !Double.isNaN(output[i])).boxed()
        .sorted(Comparator.comparingDouble(i -> input[i])).toArray(Integer[]::new);
    int n = order.length;
    int classes = classes(n);
    if (n < 40) {
      return Double.NaN;
    }
    double mean = Arrays.stream(order).mapToDouble(i -> output[i]).average().orElseThrow();
    double total = Arrays.stream(order).mapToDouble(i -> (output[i] - mean) * (output[i] - mean)).sum();
    double between = 0;
    for (int c = 0; c < classes; c++) {
      int from = n * c / classes;
      int to = n * (c + 1) / classes;
      double sum = 0;
      for (int k = from; k < to; k++) {
        sum += output[order[k]] - mean;
      }
      between += sum * sum / (to - from);
    }
    double ratio = total > 0 ? between / total : 0;
    double chance = (double) (classes - 1) / (n - 1);
    return Math.clamp((ratio - chance) / (1 - chance), 0, 1);
  }
}
