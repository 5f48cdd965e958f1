package daubline.engine.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/**
 * Alkali, iron and magnesium oxides of 23 lavas of Skye. Source: Aitchison 1986, The statistical analysis of compositional
 * data, data 6 (figures from memory, confirmed by reproducing the centre and the variations computed with the R package
 * compositions 2.0-8).
 */
class LogRatioSummaryTest {

  private static final double[][] LAVAS = {{52, 42, 6}, {52, 44, 4}, {47, 48, 5}, {45, 49, 6}, {40, 50, 10}, {37, 54, 9}, {27, 58, 15},
      {27, 54, 19}, {23, 59, 18}, {22, 59, 19}, {21, 60, 19}, {25, 53, 22}, {24, 54, 22}, {22, 55, 23}, {22, 56, 22}, {20, 58, 22}, {16, 62, 22},
      {17, 57, 26}, {14, 54, 32}, {13, 55, 32}, {13, 52, 35}, {14, 47, 39}, {24, 56, 20}};

  @Test
  void centreAndVariations() {
    LogRatioSummary summary = LogRatioSummary.of(LAVAS);
    assertArrayEquals(new double[] {0.25854192042, 0.566507332354, 0.174950747226}, summary.centre(), 1e-10);
    assertEquals(0.581846179485, summary.totalVariance(), 1e-10);
    assertEquals(0.251145021077, summary.variation(0, 1), 1e-10);
    assertEquals(1.144140482181, summary.variation(0, 2), 1e-10);
    assertEquals(0.350253035196, summary.variation(1, 2), 1e-10);
  }
}
