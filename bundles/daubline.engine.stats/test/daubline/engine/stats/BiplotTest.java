package daubline.engine.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** The biplot against what the theory says of it. */
class BiplotTest {

  private static final double[][] THREE = {{0.70, 0.25, 0.05}, {0.66, 0.28, 0.06}, {0.60, 0.25, 0.15}, {0.75, 0.20, 0.05}, {0.55, 0.40, 0.05}};

  @Test
  void withThreePartsTheDistancesAreAitchisonDistances() {
    double[][] scores = Biplot.of(THREE).scores();
    for (int i = 0; i < THREE.length; i++) {
      for (int j = 0; j < i; j++) {
        double sum = 0;
        for (int a = 0; a < 3; a++) {
          for (int b = 0; b < 3; b++) {
            sum += Math.pow(Math.log(THREE[i][a] / THREE[i][b]) - Math.log(THREE[j][a] / THREE[j][b]), 2) / 6;
          }
        }
        // Aitchison 1986, 8.8: half the mean squared difference of all log-ratios
        assertEquals(Math.sqrt(sum), Math.hypot(scores[i][0] - scores[j][0], scores[i][1] - scores[j][1]), 1e-12);
      }
    }
  }

  @Test
  void itDependsOnNoUnitAndExplainsEverythingOfThreeParts() {
    double[][] percent = new double[THREE.length][];
    for (int i = 0; i < THREE.length; i++) {
      percent[i] = new double[] {THREE[i][0] * 100, THREE[i][1] * 100, THREE[i][2] * 100};
    }
    Biplot plot = Biplot.of(THREE);
    assertEquals(1, plot.shares()[0] + plot.shares()[1], 1e-12);
    for (int i = 0; i < THREE.length; i++) {
      assertArrayEquals(plot.scores()[i], Biplot.of(percent).scores()[i], 1e-12);
    }
  }

  @Test
  void tooLittleIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Biplot.of(new double[][] {{0.5, 0.5, 0.1}, {0.4, 0.6, 0.2}}));
    assertThrows(IllegalArgumentException.class, () -> Biplot.of(new double[][] {{1, 1, 1}, {2, 2, 2}, {3, 3, 3}}));
  }
}
