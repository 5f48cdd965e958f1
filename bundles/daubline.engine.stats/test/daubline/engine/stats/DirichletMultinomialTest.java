package daubline.engine.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Values by formula in R 4.2.2. */
class DirichletMultinomialTest {

  private static final int[] COUNTS = {3, 5, 2};

  @Test
  void probabilities() {
    assertEquals(1 / 66.0, Math.exp(DirichletMultinomial.log(COUNTS, new double[] {1, 1, 1})), 1e-12);
    assertEquals(0.027972027972, Math.exp(DirichletMultinomial.log(COUNTS, new double[] {2, 3, 1})), 1e-12);
    assertEquals(0.00779406352162, Math.exp(DirichletMultinomial.log(COUNTS, new double[] {0.5, 0.5, 0.5})), 1e-13);
    assertEquals(2.14065422585, DirichletMultinomial.logDensity(new double[] {0.2, 0.3, 0.5}, new double[] {2, 3, 5}), 1e-11);
  }

  /** The mode against complete enumeration. */
  @Test
  void modeIsTheMostProbable() {
    double[] alpha = {4.5, 2.5, 8.5};
    int[] mode = DirichletMultinomial.mode(12, alpha);
    double top = DirichletMultinomial.log(mode, alpha);
    for (int a = 0; a <= 12; a++) {
      for (int b = 0; a + b <= 12; b++) {
        assertTrue(DirichletMultinomial.log(new int[] {a, b, 12 - a - b}, alpha) <= top + 1e-12);
      }
    }
    assertArrayEquals(new int[] {1}, DirichletMultinomial.mode(1, new double[] {1}));
  }
}
