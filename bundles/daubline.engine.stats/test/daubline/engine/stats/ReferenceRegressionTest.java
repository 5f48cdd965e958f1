package daubline.engine.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The eleven linear regressions and nine of the analyses of variance of the NIST Statistical Reference Datasets (public domain;
 * Norris, Pontius, NoInt1, NoInt2, Filip, Longley, Wampler1–5), certified to 15 digits. Each check states the least log relative
 * error, that is the number of correct digits, −log₁₀(|got − certified| / |certified|). Thresholds lie about one digit below what
 * Householder reflections on the raw columns reached when measured.
 */
class ReferenceRegressionTest {

  private static final double[][] NORRIS = {{0.1, 0.2}, {338.8, 337.4}, {118.1, 118.2}, {888.0, 884.6}, {9.2, 10.1},
    {228.1, 226.5}, {668.5, 666.3}, {998.5, 996.3}, {449.1, 448.6}, {778.9, 777.0}, {559.2, 558.2}, {0.3, 0.4}, {0.1, 0.6},
    {778.1, 775.5}, {668.8, 666.9}, {339.3, 338.0}, {448.9, 447.5}, {10.8, 11.6}, {557.7, 556.0}, {228.3, 228.1},
    {998.0, 995.8}, {888.8, 887.6}, {119.6, 120.2}, {0.3, 0.3}, {0.6, 0.3}, {557.6, 556.8}, {339.3, 339.1}, {888.0, 887.2},
    {998.5, 999.0}, {778.9, 779.0}, {10.2, 11.1}, {117.6, 118.3}, {228.9, 229.2}, {668.4, 669.1}, {449.2, 448.9}, {0.2, 0.5}};

  /** Pontius: deflection of a load cell in two rounds over the loads 150 000 to 3 000 000 by steps of 150 000. */
  private static final double[] PONTIUS = {.11019, .21956, .32949, .43899, .54803, .65694, .76562, .87487, .98292, 1.09146, 1.20001, 1.30822,
    1.41599, 1.52399, 1.63194, 1.73947, 1.84646, 1.95392, 2.06128, 2.16844, .11052, .22018, .32939, .43886, .54798, .65739, .76596, .87474,
    .98300, 1.09150, 1.20004, 1.30818, 1.41613, 1.52408, 1.63159, 1.73965, 1.84696, 1.95445, 2.06177, 2.16829};

  /** Longley 1967: deflator, product in millions, unemployed, armed forces, population, year; employment in thousands. */
  private static final double[][] LONGLEY = {{83.0, 234289, 2356, 1590, 107608, 1947, 60323},
    {88.5, 259426, 2325, 1456, 108632, 1948, 61122}, {88.2, 258054, 3682, 1616, 109773, 1949, 60171},
    {89.5, 284599, 3351, 1650, 110929, 1950, 61187}, {96.2, 328975, 2099, 3099, 112075, 1951, 63221},
    {98.1, 346999, 1932, 3594, 113270, 1952, 63639}, {99.0, 365385, 1870, 3547, 115094, 1953, 64989},
    {100.0, 363112, 3578, 3350, 116219, 1954, 63761}, {101.2, 397469, 2904, 3048, 117388, 1955, 66019},
    {104.6, 419180, 2822, 2857, 118734, 1956, 67857}, {108.4, 442769, 2936, 2798, 120445, 1957, 68169},
    {110.8, 444546, 4681, 2637, 121950, 1958, 66513}, {112.6, 482704, 3813, 2552, 123366, 1959, 68655},
    {114.2, 502601, 3931, 2514, 125368, 1960, 69564}, {115.7, 518173, 4806, 2572, 127852, 1961, 69331},
    {116.9, 554894, 4007, 2827, 130081, 1962, 70551}};

  private static final double[] ERRORS = {759, -2048, 2048, -2048, 2523, -2048, 2048, -2048, 1838, -2048, 2048, -2048, 1838,
    -2048, 2048, -2048, 2523, -2048, 2048, -2048, 759};

  /** Filippelli: observation and abscissa in turn. */
  private static final double[] FILIP = {
    0.8116, -6.860120914, 0.9072, -4.324130045, 0.9052, -4.358625055, 0.9039, -4.358426747, 0.8053, -6.955852379,
    0.8377, -6.661145254, 0.8667, -6.355462942, 0.8809, -6.118102026, 0.7975, -7.115148017, 0.8162, -6.815308569,
    0.8515, -6.519993057, 0.8766, -6.204119983, 0.8885, -5.853871964, 0.8859, -6.109523091, 0.8959, -5.79832982,
    0.8913, -5.482672118, 0.8959, -5.171791386, 0.8971, -4.851705903, 0.9021, -4.517126416, 0.909, -4.143573228,
    0.9139, -3.709075441, 0.9199, -3.499489089, 0.8692, -6.300769497, 0.8872, -5.953504836, 0.89, -5.642065153,
    0.891, -5.031376979, 0.8977, -4.680685696, 0.9035, -4.329846955, 0.9078, -3.928486195, 0.7675, -8.56735134,
    0.7705, -8.363211311, 0.7713, -8.107682739, 0.7736, -7.823908741, 0.7775, -7.522878745, 0.7841, -7.218819279,
    0.7971, -6.920818754, 0.8329, -6.628932138, 0.8641, -6.323946875, 0.8804, -5.991399828, 0.7668, -8.781464495,
    0.7633, -8.663140179, 0.7678, -8.473531488, 0.7697, -8.247337057, 0.77, -7.971428747, 0.7749, -7.676129393,
    0.7796, -7.352812702, 0.7897, -7.072065318, 0.8131, -6.774174009, 0.8498, -6.478861916, 0.8741, -6.159517513,
    0.8061, -6.835647144, 0.846, -6.53165267, 0.8751, -6.224098421, 0.8856, -5.910094889, 0.8919, -5.598599459,
    0.8934, -5.290645224, 0.894, -4.974284616, 0.8957, -4.64454848, 0.9047, -4.290560426, 0.9129, -3.885055584,
    0.9209, -3.408378962, 0.9219, -3.13200249, 0.7739, -8.726767166, 0.7681, -8.66695597, 0.7665, -8.511026475,
    0.7703, -8.165388579, 0.7702, -7.886056648, 0.7761, -7.588043762, 0.7809, -7.283412422, 0.7961, -6.995678626,
    0.8253, -6.691862621, 0.8602, -6.392544977, 0.8809, -6.067374056, 0.8301, -6.684029655, 0.8664, -6.378719832,
    0.8834, -6.065855188, 0.8898, -5.752272167, 0.8964, -5.132414673, 0.8963, -4.811352704, 0.9074, -4.098269308,
    0.9119, -3.66174277, 0.9228, -3.2644011};

  private static double digits(double certified, double got) {
    return certified == got ? 15 : Math.min(15, -Math.log10(Math.abs(got - certified) / Math.abs(certified)));
  }

  @Test
  void norris() {
    double[][] x = new double[NORRIS.length][];
    double[] y = new double[NORRIS.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = new double[] {1, NORRIS[i][1]};
      y[i] = NORRIS[i][0];
    }
    LeastSquares.Fit fit = LeastSquares.fit(x, y);
    assertTrue(digits(-0.262323073774029, fit.coefficients()[0]) > 12, digits(-0.262323073774029, fit.coefficients()[0]) + "");
    assertTrue(digits(1.00211681802045, fit.coefficients()[1]) > 12, digits(1.00211681802045, fit.coefficients()[1]) + "");
    assertTrue(digits(0.232818234301152, fit.standardError(0)) > 12, digits(0.232818234301152, fit.standardError(0)) + "");
    assertTrue(digits(0.884796396144373, Math.sqrt(fit.variance())) > 12, digits(0.884796396144373, Math.sqrt(fit.variance())) + "");
  }

  /** A quadratic over raw loads: the columns differ by twelve orders of magnitude. */
  @Test
  void pontius() {
    double[] certified = {0.000673565789473684, 7.32059160401003e-7, -3.16081871345029e-15};
    double[] errors = {0.000107938612033077, 1.57817399981659e-10, 4.86652849992036e-17};
    double[][] x = new double[PONTIUS.length][];
    for (int i = 0; i < x.length; i++) {
      double load = 150_000.0 * (1 + i % 20);
      x[i] = new double[] {1, load, load * load};
    }
    LeastSquares.Fit fit = LeastSquares.fit(x, PONTIUS);
    assertEquals(List.of(), fit.dependent());
    for (int j = 0; j < 3; j++) {
      assertTrue(digits(certified[j], fit.coefficients()[j]) > 11, j + ": " + digits(certified[j], fit.coefficients()[j]));
      assertTrue(digits(errors[j], fit.standardError(j)) > 11, j + ": " + digits(errors[j], fit.standardError(j)));
    }
    assertTrue(digits(0.000205177424076185, Math.sqrt(fit.variance())) > 11, digits(0.000205177424076185, Math.sqrt(fit.variance())) + "");
  }

  @Test
  void longley() {
    double[] certified = {-3482258.63459582, 15.0618722713733, -0.0358191792925910, -2.02022980381683, -1.03322686717359,
      -0.0511041056535807, 1829.15146461355};
    double[][] x = new double[LONGLEY.length][];
    double[] y = new double[LONGLEY.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = new double[] {1, LONGLEY[i][0], LONGLEY[i][1], LONGLEY[i][2], LONGLEY[i][3], LONGLEY[i][4], LONGLEY[i][5]};
      y[i] = LONGLEY[i][6];
    }
    LeastSquares.Fit fit = LeastSquares.fit(x, y);
    for (int j = 0; j < certified.length; j++) {
      assertTrue(digits(certified[j], fit.coefficients()[j]) > 11, j + ": " + digits(certified[j], fit.coefficients()[j]));
    }
    assertTrue(digits(304.854073561965, Math.sqrt(fit.variance())) > 11);
    assertTrue(digits(890420.383607373, fit.standardError(0)) > 11);
  }

  /** Lines through the origin: y = 130 … 140 at x = 60 … 70, and y = 3, 4, 4 at x = 4, 5, 6. */
  @Test
  void linesWithoutIntercept() {
    double[][] x = new double[11][];
    double[] y = new double[11];
    for (int i = 0; i < 11; i++) {
      x[i] = new double[] {60 + i};
      y[i] = 130 + i;
    }
    assertLine(LeastSquares.fit(x, y), 2.07438016528926, 0.0165289256198347, 3.56753034006338);
    assertLine(LeastSquares.fit(new double[][] {{4}, {5}, {6}}, new double[] {3, 4, 4}), 0.727272727272727, 0.0420827318078432, 0.369274472937998);
  }

  private static void assertLine(LeastSquares.Fit fit, double slope, double error, double deviation) {
    assertTrue(digits(slope, fit.coefficients()[0]) > 13.5);
    assertTrue(digits(error, fit.standardError(0)) > 13);
    assertTrue(digits(deviation, Math.sqrt(fit.variance())) > 13);
  }

  /** A polynomial of degree ten whose columns are dependent to fifteen digits: seven digits are what a double holds of it. */
  @Test
  void filippelli() {
    double[] certified = {-1467.48961422980, -2772.17959193342, -2316.37108160893, -1127.97394098372, -354.478233703349, -75.1242017393757,
        -10.8753180355343, -1.06221498588947, -0.0670191154593408, -0.00246781078275479, -0.0000402962525080404};
    double[][] x = new double[FILIP.length / 2][11];
    double[] y = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      y[i] = FILIP[2 * i];
      for (int j = 0; j < 11; j++) {
        x[i][j] = Math.pow(FILIP[2 * i + 1], j);
      }
    }
    LeastSquares.Fit fit = LeastSquares.fit(x, y);
    assertEquals(List.of(), fit.dependent());
    for (int j = 0; j < 11; j++) {
      double digits = digits(certified[j], fit.coefficients()[j]);
      assertTrue(digits > 6, "coefficient " + j + " has " + digits + " digits");
    }
    assertTrue(digits(0.00334801051324544, Math.sqrt(fit.variance())) > 6);
  }

  // Wampler 1970: y = Σ c^j x^j + size · error, x = 0 … 20; all coefficients are known exactly.
  @ParameterizedTest
  @CsvSource({"1,0,8.7", "0.1,0,11.5", "1,1,8.1", "1,100,6.9", "1,10000,4.8"})
  void wampler(double c, double size, double least) {
    double[][] x = new double[21][6];
    double[] y = new double[21];
    for (int i = 0; i < 21; i++) {
      for (int j = 0; j < 6; j++) {
        x[i][j] = Math.pow(i, j);
        y[i] += Math.pow(c, j) * x[i][j];
      }
      y[i] += size * ERRORS[i];
    }
    LeastSquares.Fit fit = LeastSquares.fit(x, y);
    for (int j = 0; j < 6; j++) {
      double digits = digits(Math.pow(c, j), fit.coefficients()[j]);
      assertTrue(digits > least, "coefficient " + j + " has " + digits + " digits");
    }
    if (size > 0) {
      assertTrue(digits(2360.14502379268 * size, Math.sqrt(fit.variance())) > 12);
    }
  }

  @Test
  void dependentColumnsAreNamedAndTheOthersFitted() {
    double[][] x = {{1, 0, 1, 2}, {1, 1, 2, 0}, {1, 2, 3, 1}, {1, 3, 4, 5}, {1, 4, 5, 1}};
    LeastSquares.Fit fit = LeastSquares.fit(x, new double[] {1, 3, 5, 7, 9});
    assertEquals(List.of(2), fit.dependent());
    assertEquals(2, fit.coefficients()[1], 1e-12);
    assertTrue(Double.isNaN(fit.coefficients()[2]));
    assertEquals(2, fit.freedom());
  }

  @Test
  void analysisOfVarianceOfTheReferenceSets() {
    OneWayAnova resistivity = OneWayAnova.of(groups(5, 196.3052, 196.1240, 196.1890, 196.2569, 196.3403, 196.3042, 196.3825,
        196.1669, 196.3257, 196.0422, 196.1303, 196.2005, 196.2889, 196.0343, 196.1811, 196.2795, 196.1748, 196.1494, 196.1485,
        195.9885, 196.2119, 196.1051, 196.1850, 196.0052, 196.2090));
    assertTrue(digits(1.18046237440255, resistivity.f()) > 12);
    OneWayAnova silver = OneWayAnova.of(groups(24, 107.8681568, 107.8681465, 107.8681572, 107.8681785, 107.8681446, 107.8681903,
        107.8681526, 107.8681494, 107.8681616, 107.8681587, 107.8681519, 107.8681486, 107.8681419, 107.8681569, 107.8681508,
        107.8681672, 107.8681385, 107.8681518, 107.8681662, 107.8681424, 107.8681360, 107.8681333, 107.8681610, 107.8681477,
        107.8681079, 107.8681344, 107.8681513, 107.8681197, 107.8681604, 107.8681385, 107.8681642, 107.8681365, 107.8681151,
        107.8681082, 107.8681517, 107.8681448, 107.8681198, 107.8681482, 107.8681334, 107.8681609, 107.8681101, 107.8681512,
        107.8681469, 107.8681360, 107.8681254, 107.8681261, 107.8681450, 107.8681368));
    assertTrue(digits(15.9467335677930, silver.f()) > 9.5, digits(15.9467335677930, silver.f()) + "");
  }

  // Simon & Lesage 1989: nine groups about 1.4, shifted by 0, 10^6 and 10^12; F is exactly 21, 201 and 2001.
  @ParameterizedTest
  @CsvSource({"0,21,14", "0,201,14", "0,2001,12.5", "1000000,21,9.5", "1000000,201,9.5", "1000000,2001,9.5",
      "1000000000000,21,3.5", "1000000000000,201,3.5", "1000000000000,2001,3.5"})
  void manyConstantLeadingDigits(double shift, int size, double least) {
    double[][] pattern = {{1.4, 1.3, 1.5}, {1.3, 1.2, 1.4}, {1.5, 1.4, 1.6}};
    List<double[]> groups = new ArrayList<>();
    for (int g = 0; g < 9; g++) {
      double[] of = pattern[g == 0 ? 0 : 2 - g % 2];
      double[] values = new double[size];
      for (int i = 0; i < size; i++) {
        values[i] = shift + of[i == 0 ? 0 : 2 - i % 2];
      }
      groups.add(values);
    }
    double digits = digits(size, OneWayAnova.of(groups).f());
    assertTrue(digits > least, digits + " digits");
  }

  private static List<double[]> groups(int size, double... values) {
    List<double[]> groups = new ArrayList<>();
    for (int i = 0; i < values.length; i += size) {
      groups.add(java.util.Arrays.copyOfRange(values, i, i + size));
    }
    return groups;
  }
}
