package daubline.engine.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Worked examples of JCGM 100:2008 (H.1, H.2) and JCGM 101:2008 (9.2 to 9.5); published numbers from memory, reproduced in R 4.2.2. */
class UncertaintyTest {

  private static final int MOST = 4_000_000;

  /** H.1: length of an end gauge, nanometres; 32 nm with 16 degrees of freedom, 34 nm with second-order terms. */
  @Test
  void endGauge() {
    List<Uncertain> inputs = List.of(Uncertain.normal(50_000_623, 25, 18), Uncertain.normal(215, 9.7, 25.6),
        Uncertain.normal(0, 1e-6 / Math.sqrt(3), 50), Uncertain.normal(-0.1, 0.4062), Uncertain.normal(11.5e-6, 1.2e-6), Uncertain.normal(0, 0.029, 2));
    Propagation p = Propagation.of(x -> x[0] + x[1] - x[0] * (x[2] * x[3] + x[4] * x[5]), inputs);
    assertEquals(50_000_838, p.value(), 1);
    assertEquals(31.67, p.sigma(), 0.05);
    assertEquals(16.7, p.freedom(), 0.2);
    assertEquals(33.8, p.secondOrder(), 0.1);
  }

  /** H.2: resistance, reactance and impedance from five triples, correlated. */
  @Test
  void impedance() {
    double[][] raw = {{5.007, 4.994, 5.005, 4.990, 4.999}, {19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3},
        {1.0456, 1.0438, 1.0468, 1.0428, 1.0433}};
    double[] mean = new double[3];
    double[][] covariance = new double[3][3];
    for (int i = 0; i < 3; i++) {
      for (double v : raw[i]) {
        mean[i] += v / 5;
      }
    }
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        for (int k = 0; k < 5; k++) {
          covariance[i][j] += (raw[i][k] - mean[i]) * (raw[j][k] - mean[j]) / 20;
        }
      }
    }
    double[][] correlation = new double[3][3];
    List<Uncertain> inputs = List.of(0, 1, 2).stream().map(i -> Uncertain.normal(mean[i], Math.sqrt(covariance[i][i]))).toList();
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        correlation[i][j] = covariance[i][j] / Math.sqrt(covariance[i][i] * covariance[j][j]);
      }
    }
    Propagation r = Propagation.of(x -> x[0] / x[1] * Math.cos(x[2]), inputs, correlation);
    Propagation x = Propagation.of(v -> v[0] / v[1] * Math.sin(v[2]), inputs, correlation);
    Propagation z = Propagation.of(v -> v[0] / v[1], inputs, correlation);
    assertEquals(127.7321699, r.value(), 1e-6);
    assertEquals(219.8465119, x.value(), 1e-6);
    assertEquals(254.2597019, z.value(), 1e-6);
    assertEquals(0.0710714074, r.sigma(), 1e-6);
    assertEquals(0.2955816774, x.sigma(), 1e-6);
    assertEquals(0.2363361301, z.sigma(), 1e-6);
    assertEquals(-0.588, Propagation.correlation(r, x, inputs, correlation), 5e-4);
    assertEquals(-0.485, Propagation.correlation(r, z, inputs, correlation), 5e-4);
    assertEquals(0.993, Propagation.correlation(x, z, inputs, correlation), 6e-4);
  }

  private static final ToDoubleFunction<double[]> SUM = x -> x[0] + x[1] + x[2] + x[3];

  /** 9.2.2: four standard normal inputs; first order holds. */
  @Test
  void fourNormals() {
    List<Uncertain> inputs = List.of(Uncertain.normal(0, 1), Uncertain.normal(0, 1), Uncertain.normal(0, 1), Uncertain.normal(0, 1));
    Distribution d = Distribution.of(SUM, inputs, 0.95, 5, MOST);
    assertTrue(d.settled());
    assertEquals(2, d.sigma(), 0.05);
    assertEquals(3.92, d.high(), 0.1);
    assertTrue(d.confirms(Propagation.of(SUM, inputs), 0.95));
    assertEquals("", d.notice(Propagation.of(SUM, inputs), 0.95));
  }

  /** 9.2.3 and 9.2.4: four rectangular inputs (exact end 3.8794), and one of ten times the width (±17.0). */
  @Test
  void rectangulars() {
    double half = Math.sqrt(3);
    Uncertain one = Uncertain.rectangular(-half, half);
    Distribution equal = Distribution.of(SUM, List.of(one, one, one, one), 0.95, 6, MOST);
    assertEquals(3.8794, equal.high(), 0.06);
    Distribution wide = Distribution.of(SUM, List.of(one, one, one, Uncertain.rectangular(-10 * half, 10 * half)), 0.95, 7, MOST);
    assertEquals(17.02, wide.high(), 0.3);
    assertEquals(10.15, wide.sigma(), 0.3);
    assertFalse(wide.confirms(Propagation.of(SUM, List.of(one, one, one, Uncertain.rectangular(-10 * half, 10 * half))), 0.95));
  }

  /** 9.3: mass calibration; 1.234 mg, 0.0754 mg, shortest [1.0834, 1.3825]; first order gives 0.0539 and is not valid. */
  @Test
  void massCalibrationIsNotFirstOrder() {
    List<Uncertain> inputs = List.of(Uncertain.normal(100_000, 0.05), Uncertain.normal(1.234, 0.02), Uncertain.rectangular(1.1, 1.3),
        Uncertain.rectangular(7000, 9000), Uncertain.rectangular(7950, 8050));
    ToDoubleFunction<double[]> model = x -> (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000;
    Propagation first = Propagation.of(model, inputs);
    Distribution d = Distribution.of(model, inputs, 0.95, 8, MOST);
    assertEquals(1.234, d.mean(), 0.001);
    assertEquals(0.0754, d.sigma(), 0.0006);
    assertEquals(1.0834, d.shortLow(), 0.005);
    assertEquals(1.3825, d.shortHigh(), 0.005);
    assertEquals(0.0539, first.sigma(), 0.0001);
    assertEquals(0.0750, first.secondOrder(), 0.0005);
    assertTrue(d.notice(first, 0.95).contains("not valid"));
  }

  /**
   * 9.4: comparison loss in the calibration of a microwave power meter, x1² + x2² with u = 0.005 each, in 1e-6. Published means
   * 50, 150, 2550 and uncertainties 50, 112, 502 for x1 = 0, 0.010, 0.050 (from memory, and exactly by the moments of a squared
   * normal); the first interval is that of an exponential distribution, 0 to 50 ln 20. First order gives 0, 100 and 500.
   */
  @Test
  void comparisonLoss() {
    double u = 0.005;
    double[][] published = {{0, 50, 50, 0}, {0.010, 150, 112, 100}, {0.050, 2550, 502, 500}};
    for (double[] row : published) {
      List<Uncertain> inputs = List.of(Uncertain.normal(row[0], u), Uncertain.normal(0, u));
      ToDoubleFunction<double[]> loss = x -> 1e6 * (x[0] * x[0] + x[1] * x[1]);
      Distribution d = Distribution.of(loss, inputs, 0.95, 9, MOST);
      Propagation first = Propagation.of(loss, inputs);
      assertEquals(row[1], d.mean(), 1);
      assertEquals(row[2], d.sigma(), 1);
      assertEquals(1e6 * Math.sqrt(4 * u * u * row[0] * row[0] + 4 * u * u * u * u), d.sigma(), 0.01 * row[2]);
      assertEquals(row[3], first.sigma(), 0.5);
      assertTrue(d.notice(first, 0.95).contains("not valid"), "x1 = " + row[0]);
    }
    Distribution none = Distribution.of(x -> 1e6 * (x[0] * x[0] + x[1] * x[1]), List.of(Uncertain.normal(0, u), Uncertain.normal(0, u)), 0.95, 10, MOST);
    assertEquals(0, none.shortLow(), 0.1);
    assertEquals(50 * Math.log(20), none.shortHigh(), 1.5);
  }

  /** A bound known only within d: a rectangle whose ends are drawn (JCGM 101, 6.4.3). */
  private static Uncertain blurred(double low, double high, double d) {
    return new Uncertain((low + high) / 2, (high - low) / Math.sqrt(12), Double.POSITIVE_INFINITY, r -> {
      double start = low - d + 2 * d * r.uniform();
      return start + (low + high - 2 * start) * r.uniform();
    });
  }

  /** A cyclic deviation between two bounds: arc sine distribution (JCGM 101, 6.4.6). */
  private static Uncertain cyclic(double low, double high) {
    return new Uncertain((low + high) / 2, (high - low) / Math.sqrt(8), Double.POSITIVE_INFINITY,
        r -> (low + high) / 2 + (high - low) / 2 * Math.sin(2 * Math.PI * r.uniform()));
  }

  /** 9.5: gauge block, nanometres above nominal; published 838, 36 and the shortest 99 % interval 745 to 932. */
  @Test
  void gaugeBlock() {
    List<Uncertain> inputs = List.of(Uncertain.normal(50_000_623, 25, 18), Uncertain.normal(215, 6, 24), Uncertain.normal(0, 4, 5), Uncertain.normal(0, 7, 8),
        Uncertain.rectangular(9.5e-6, 13.5e-6), Uncertain.normal(-0.1, 0.2), cyclic(-0.5, 0.5), blurred(-1e-6, 1e-6, 0.1e-6), blurred(-0.05, 0.05, 0.025));
    ToDoubleFunction<double[]> block = x -> x[0] + x[1] + x[2] + x[3] - x[0] * (x[7] * (x[5] + x[6]) + x[4] * x[8]) - 50_000_000;
    Distribution d = Distribution.of(block, inputs, 0.99, 11, MOST);
    assertEquals(838, d.mean(), 0.5);
    assertEquals(36, d.sigma(), 0.5);
    assertEquals(745, d.shortLow(), 1.5);
    assertEquals(932, d.shortHigh(), 1.5);
  }

  /** Half of the second significant digit: 0.0754 gives 0.0005, 36 gives 0.5. */
  @Test
  void tolerance() {
    assertEquals(0.0005, Distribution.tolerance(0.0754), 1e-15);
    assertEquals(0.5, Distribution.tolerance(36), 1e-12);
  }
}
