package daubline.engine.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * Iron in slag by a chemical and a magnetic method, per cent, 53 samples: Hand, Daly, Lunn, McConway &amp; Ostrowski 1993, A
 * handbook of small data sets (industrial slag). Expected figures: R 4.2.2, lm and cor.
 */
class MethodBiasTest {

  /** Chemical, magnetic; in the order of the source. */
  private static final String PAIRS = """
      24,25 16,22 24,17 18,21 18,20 10,13 14,16 16,14 18,19 20,10 21,23 20,20 21,19 15,15 16,16 15,16 17,12 19,15 16,15 15,15 15,15 13,17
      24,18 22,16 21,18 24,22 15,20 20,21 20,21 25,21 27,25 22,22 20,18 24,21 24,18 23,20 29,25 27,20 23,18 19,19 25,16 15,16 16,16 27,26
      27,28 30,28 29,30 26,32 25,28 25,36 32,40 28,33 25,33""";

  private static double[][] pairs() {
    return Arrays.stream(PAIRS.split("\\s+")).map(p -> Arrays.stream(p.split(",")).mapToDouble(Double::parseDouble).toArray()).toArray(double[][]::new);
  }

  @Test
  void chemicalAgainstMagnetic() {
    double[][] pairs = pairs();
    assertEquals(53, pairs.length);
    double[][] x = Arrays.stream(pairs).map(p -> new double[] {1, p[1]}).toArray(double[][]::new);
    LeastSquares.Fit fit = LeastSquares.fit(x, Arrays.stream(pairs).mapToDouble(p -> p[0]).toArray());
    assertEquals(8.957, fit.coefficients()[0], 5e-4);
    assertEquals(0.5866, fit.coefficients()[1], 5e-5);
    double[] magnetic = Arrays.stream(pairs).mapToDouble(p -> p[1]).toArray();
    double[] chemical = Arrays.stream(pairs).mapToDouble(p -> p[0]).toArray();
    // the slope times the ratio of the standard deviations
    assertEquals(0.733, fit.coefficients()[1] * Math.sqrt(squares(magnetic) / squares(chemical)), 5e-4);
  }

  /** The magnetic method is not merely shifted: a slope so far below one means that no constant corrects it. */
  @Test
  void theBiasIsNotAConstant() {
    double[][] pairs = pairs();
    double[][] x = Arrays.stream(pairs).map(p -> new double[] {1, p[1]}).toArray(double[][]::new);
    LeastSquares.Fit fit = LeastSquares.fit(x, Arrays.stream(pairs).mapToDouble(p -> p[0]).toArray());
    double error = Math.sqrt(fit.residualSquares() / fit.freedom() * fit.inverse()[1][1]);
    assertTrue((1 - fit.coefficients()[1]) / error > 5);
  }

  private static double squares(double[] x) {
    double mean = Arrays.stream(x).average().orElseThrow();
    return Arrays.stream(x).map(v -> (v - mean) * (v - mean)).sum();
  }
}
