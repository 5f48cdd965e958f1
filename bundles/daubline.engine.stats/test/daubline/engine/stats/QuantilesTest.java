package daubline.engine.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class QuantilesTest {

  /** R: quantile(c(3, 1, 4, 1, 5, 9, 2, 6), c(.05, .5, .95)) = 1.00, 3.50, 7.95. */
  @Test
  void definitionSeven() {
    assertArrayEquals(new double[] {1, 3.5, 7.95}, Quantiles.of(new double[] {3, 1, 4, 1, 5, 9, 2, 6}, 0.05, 0.5, 0.95), 1e-12);
  }

  @Test
  void agreesWithSorting() {
    RandomStream random = new RandomStream(4);
    for (int i = 0; i < 2000; i++) {
      double[] values = new double[1 + random.below(60)];
      Arrays.setAll(values, k -> random.below(20));
      double[] sorted = values.clone();
      Arrays.sort(sorted);
      double[] probabilities = {0, 0.05, 0.31, 0.5, 0.95, 1};
      double[] quantiles = Quantiles.of(values, probabilities);
      for (int q = 0; q < quantiles.length; q++) {
        double position = probabilities[q] * (sorted.length - 1);
        int below = (int) position;
        double next = sorted[Math.min(below + 1, sorted.length - 1)];
        assertEquals(sorted[below] + (position - below) * (next - sorted[below]), quantiles[q], 1e-12);
      }
    }
  }
}
