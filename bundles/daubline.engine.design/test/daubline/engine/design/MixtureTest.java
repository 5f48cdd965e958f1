package daubline.engine.design;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.design.learn.EffectsReport;
import daubline.engine.design.learn.EffectsRequest;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Shares of one whole are seen as such, and a surface over them is the published one. */
class MixtureTest {

  private static final List<Factor> FACTORS = List.of(Factor.measured("a", "clay", "%", 40, 80), Factor.measured("b", "sand", "%", 10, 50),
      Factor.measured("c", "dung", "%", 0, 30));

  private static Design of(List<Factor> factors, double[][] shares) {
    double[][] coded = Arrays.stream(shares).map(s -> {
      double[] c = new double[s.length];
      for (int j = 0; j < c.length; j++) {
        c[j] = factors.get(j).code(s[j]);
      }
      return c;
    }).toArray(double[][]::new);
    return Design.independent("mixture", factors, coded);
  }

  @Test
  void threeSharesThatAddUpAreAMixture() {
    Design design = of(FACTORS, new double[][] {{60, 30, 10}, {50, 45, 5}, {75, 15, 10}, {60.3, 20.1, 20}});
    Mixture mixture = Mixture.of(design).orElseThrow();
    assertEquals(100, mixture.whole(), 0.2);
    assertArrayEquals(new double[] {50, 45, 5}, mixture.shares(FACTORS, design.settings().get(1)), 1e-12);
    assertEquals(List.of("clay", "sand", "dung"), mixture.names(FACTORS));
    assertArrayEquals(design.settings().get(2), mixture.with(FACTORS, new double[3], 75, 15, 10), 1e-12);
  }

  @Test
  void whatDoesNotAddUpIsNone() {
    assertTrue(Mixture.of(of(FACTORS, new double[][] {{60, 30, 10}, {50, 45, 5}, {75, 15, 20}})).isEmpty(), "one trial sums to 110");
    assertTrue(Mixture.of(of(FACTORS, new double[][] {{60, 30, 10}, {60, 30, 10}, {60, 30, 10}})).isEmpty(), "nothing was varied");
    assertTrue(Mixture.of(of(FACTORS, new double[][] {{60, 30, 10}, {50, 45, 5}})).isEmpty(), "two trials make no surface");
    List<Factor> units = List.of(FACTORS.get(0), FACTORS.get(1), Factor.measured("c", "air", "L/min", 0, 30));
    assertTrue(Mixture.of(of(units, new double[][] {{60, 30, 10}, {50, 45, 5}, {75, 15, 10}})).isEmpty(), "units differ");
  }

  @Test
  void yarnOfTheHandbook() {
    // Source: NIST/SEMATECH e-Handbook 5.5.4.2 (Cornell): elongation of yarn from three polymers, a simplex lattice; the published fit is
    // 11.7 x1 + 9.4 x2 + 16.4 x3 + 19.0 x1x2 + 11.4 x1x3 - 9.6 x2x3 (data and fit from memory; the fit is reached below from the data).
    List<Factor> parts = List.of(Factor.measured("x1", "x1", "", 0, 1), Factor.measured("x2", "x2", "", 0, 1), Factor.measured("x3", "x3", "", 0, 1));
    double[][] x = {{1, 0, 0}, {1, 0, 0}, {.5, .5, 0}, {.5, .5, 0}, {.5, .5, 0}, {0, 1, 0}, {0, 1, 0}, {0, .5, .5}, {0, .5, .5}, {0, .5, .5},
        {0, 0, 1}, {0, 0, 1}, {.5, 0, .5}, {.5, 0, .5}, {.5, 0, .5}};
    double[] y = {11.0, 12.4, 15.0, 14.8, 16.1, 8.8, 10.0, 10.0, 9.7, 11.8, 16.8, 16.0, 17.7, 16.4, 16.6};
    Design design = of(parts, x);
    Mixture mixture = Mixture.of(design).orElseThrow();
    EffectsReport report = EffectsReport.of(new EffectsRequest(design, Model.quadratic(parts), y, "elongation", "", 0.95, 1));
    for (double[] at : new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {1 / 3.0, 1 / 3.0, 1 / 3.0}, {.2, .5, .3}}) {
      double published = 11.7 * at[0] + 9.4 * at[1] + 16.4 * at[2] + 19.0 * at[0] * at[1] + 11.4 * at[0] * at[2] - 9.6 * at[1] * at[2];
      assertEquals(published, report.fitted().at(mixture.with(parts, new double[3], at), 0.95).mean(), 1e-9, Arrays.toString(at));
    }
  }
}
