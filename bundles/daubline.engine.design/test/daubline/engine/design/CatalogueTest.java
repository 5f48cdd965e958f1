package daubline.engine.design;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.design.catalogue.DefinitiveScreening;
import daubline.engine.design.catalogue.LatinHypercube;
import daubline.engine.design.catalogue.PlackettBurman;
import daubline.engine.design.catalogue.RegularFraction;
import daubline.engine.design.catalogue.ResponseSurface;
import daubline.engine.design.catalogue.ResponseSurface.Star;
import daubline.engine.stats.Cholesky;
import daubline.engine.stats.Matrices;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CatalogueTest {

  static List<Factor> measured(int k) {
    return IntStream.range(0, k).mapToObj(i -> Factor.measured("f" + i, "f" + i, "", -1, 1)).toList();
  }

  // Source: catalogue of Chen, Sun & Wu 1993 as computed with R FrF2 2.3-4; the resolutions and generators agree with
  // NIST/SEMATECH e-Handbook 5.3.3.4.7. Numbers of words of length 3, 4, 5.
  @ParameterizedTest
  @CsvSource({"8,4,4,0,1,0", "8,5,3,2,1,0", "8,6,3,4,3,0", "8,7,3,7,7,0", "16,5,5,0,0,1", "16,6,4,0,3,0", "16,7,4,0,7,0",
      "16,8,4,0,14,0", "16,9,3,4,14,8", "16,10,3,8,18,16", "16,11,3,12,26,28", "16,15,3,35,105,168", "32,6,6,0,0,0",
      "32,7,4,0,1,2", "32,8,4,0,3,4", "32,9,4,0,6,8", "32,10,4,0,10,16", "64,7,7,0,0,0", "64,8,5,0,0,2"})
  void fractionsHaveThePublishedResolutionAndWords(int runs, int factors, int resolution, int a3, int a4, int a5) {
    RegularFraction fraction = RegularFraction.best(runs, factors);
    assertEquals(resolution, fraction.resolution());
    int[] words = Arrays.copyOf(fraction.wordLengths(), 6);
    assertArrayEquals(new int[] {a3, a4, a5}, new int[] {words[3], words[4], words[5]});
  }

  @Test
  void aliasesOfTheSixteenTrialFractionOfSix() {
    // Source: the alias table of 2^(6-2) with E=ABC, F=ABD, e-Handbook 5.3.3.4.7 and R FrF2.
    RegularFraction fraction = RegularFraction.best(16, 6);
    assertEquals(List.of("E=ABC", "F=ABD"), fraction.generatorText());
    assertEquals("I=ABCE=ABDF=CDEF", fraction.definingRelation());
    assertEquals("AB=CE=DF; AC=BE; AD=BF; AE=BC; AF=BD; CD=EF; CF=DE", String.join("; ", fraction.aliases()));
  }

  @Test
  void aliasesAreTrueOfTheTable() {
    RegularFraction fraction = RegularFraction.best(16, 9);
    int[][] s = fraction.signs();
    assertTrue(fraction.aliases().contains("B=AE"));
    for (int[] row : s) {
      assertEquals(row[1], row[0] * row[4]);
    }
    assertTrue(columnsAreOrthogonal(s));
  }

  @Test
  void plackettBurmanIsOrthogonalAndStartsAsPublished() {
    int[] first = {1, 1, -1, 1, 1, 1, -1, -1, -1, 1, -1}; // Plackett & Burman 1946
    assertArrayEquals(first, PlackettBurman.signs(12)[0]);
    for (int n : new int[] {12, 20, 24, 32}) {
      assertTrue(columnsAreOrthogonal(PlackettBurman.signs(n)));
    }
    int[][] s = PlackettBurman.signs(12);
    for (int c = 2; c < 11; c++) {
      int column = c;
      assertEquals(4, Math.abs(Arrays.stream(s).mapToInt(r -> r[0] * r[1] * r[column]).sum())); // a third of 12
    }
  }

  private static boolean columnsAreOrthogonal(int[][] s) {
    for (int i = 0; i < s[0].length; i++) {
      int sum = 0;
      for (int[] row : s) {
        sum += row[i];
      }
      for (int j = 0; j < i; j++) {
        int dot = 0;
        for (int[] row : s) {
          dot += row[i] * row[j];
        }
        if (dot != 0) {
          return false;
        }
      }
      if (sum != 0) {
        return false;
      }
    }
    return true;
  }

  @Test
  void definitiveScreeningIsOrthogonalForEveryNumberOfFactors() {
    for (int k = 3; k <= 24; k++) {
      int[][] s = DefinitiveScreening.signs(k);
      int m = DefinitiveScreening.order(k);
      assertEquals(2 * m + 1, s.length);
      assertTrue(columnsAreOrthogonal(s), "k " + k);
      for (int j = 0; j < k; j++) {
        int column = j;
        assertEquals(2 * m - 2, Arrays.stream(s).mapToInt(r -> r[column] * r[column]).sum());
      }
    }
  }

  @Test
  void definitiveScreeningHasThePublishedEfficiency() {
    // Source: main-effect D-efficiencies of daewr 1.2-11 (R) for even k; its odd-k tables, which are not orthogonal,
    // have 0.677 (k = 5) and 0.764 (k = 7), which these must beat.
    assertEquals(0.722981, efficiency(4), 1e-6);
    assertEquals(0.798609, efficiency(6), 1e-6);
    assertEquals(0.841488, efficiency(8), 1e-6);
    assertEquals(0.869239, efficiency(10), 1e-6);
    assertTrue(efficiency(5) > 0.79);
    assertTrue(efficiency(7) > 0.83);
  }

  private static double efficiency(int k) {
    double[][] x = Model.main(measured(k)).matrix(DefinitiveScreening.design(measured(k), 0).settings());
    return Math.exp(Cholesky.of(Matrices.square(x)).logDeterminant() / (k + 1)) / x.length;
  }

  @Test
  void starDistances() {
    // Source: Box, Hunter & Hunter 2005; R rsm 2.10.6 with centre trials (4, 2).
    double[] rotatable = {1.414214, 1.681793, 2, 2.378414};
    double[] blocked = {1.224745, 1.632993, 2, 2.309401};
    for (int k = 2; k <= 5; k++) {
      assertEquals(rotatable[k - 2], ResponseSurface.alpha(Star.ROTATABLE, k, 4, 2), 1e-6);
      assertEquals(blocked[k - 2], ResponseSurface.alpha(Star.ORTHOGONAL_BLOCKS, k, 4, 2), 1e-6);
    }
  }

  // Source: R rsm 2.10.6 designs, criteria computed from them: D-efficiency and average scaled variance on the cube.
  @ParameterizedTest
  @CsvSource({"2,14,0.544677,3.124074", "3,20,0.61579,4.277467", "4,30,0.720512,5.666667"})
  void rotatableCentralComposite(int k, int runs, double d, double average) {
    double[][] settings = ResponseSurface.centralComposite(k, Star.ROTATABLE, 4, 2);
    assertCriteria(k, runs, d, average, settings);
  }

  @ParameterizedTest
  @CsvSource({"3,15,0.366429,5.770833", "4,27,0.252163,10.8", "5,43,0.17373,20.554398", "6,54,0.233823,18.925",
      "7,62,0.189095,28.148765"})
  void boxBehnken(int k, int runs, double d, double average) {
    assertCriteria(k, runs, d, average, ResponseSurface.boxBehnken(k, ResponseSurface.usualCentres(k)));
  }

  private static void assertCriteria(int k, int runs, double d, double average, double[][] settings) {
    assertEquals(runs, settings.length);
    Model model = Model.quadratic(measured(k));
    double[][] information = Matrices.square(model.matrix(List.of(settings)));
    Cholesky factored = Cholesky.of(information);
    assertEquals(d, Math.exp(factored.logDeterminant() / model.size()) / runs, 1e-6);
    double[][] w = cubeMoments(model);
    assertEquals(average, runs * Matrices.trace(factored.inverse(), w), 1e-5);
  }

  /** Exact moments of the cube [−1, 1]^k by the three-point Gauss–Legendre rule, exact up to the fifth power. */
  private static double[][] cubeMoments(Model model) {
    int k = model.factors().size();
    double[] nodes = {-Math.sqrt(0.6), 0, Math.sqrt(0.6)};
    double[] weights = {5 / 18.0, 8 / 18.0, 5 / 18.0};
    double[][] w = new double[model.size()][model.size()];
    for (int i = 0; i < Math.pow(3, k); i++) {
      double[] setting = new double[k];
      double weight = 1;
      for (int j = 0, rest = i; j < k; j++, rest /= 3) {
        setting[j] = nodes[rest % 3];
        weight *= weights[rest % 3];
      }
      double[] x = model.row(setting);
      for (int a = 0; a < x.length; a++) {
        for (int b = 0; b < x.length; b++) {
          w[a][b] += weight * x[a] * x[b];
        }
      }
    }
    return w;
  }

  @Test
  void starsStayInsideTheLimits() {
    List<Factor> factors = List.of(Factor.measured("h", "height", "m", 0.6, 1.2), Factor.measured("b", "blast", "L/min", 200, 600));
    Design design = ResponseSurface.centralComposite(factors, Star.ROTATABLE, 2, 1);
    assertTrue(design.settings().stream().allMatch(s -> Math.abs(s[0]) <= 1 + 1e-12 && Math.abs(s[1]) <= 1 + 1e-12));
    assertTrue(design.text(design.size() - 2).contains("blast 600"));
  }

  @Test
  void closestPairsReachTheProvedOptimum() {
    // Source: exhaustive search; the two-dimensional row agrees with van Dam, Husslage, den Hertog & Melissen 2007.
    int[] two = {2, 2, 5, 5, 5, 8, 8, 10, 10, 10, 13};
    int[] three = {3, 6, 6, 11, 14, 17, 21};
    int[] four = {4, 7, 12, 15, 22};
    for (int n = 2; n <= 12; n++) {
      assertEquals(two[n - 2], LatinHypercube.search(n, 2, 120, 1, Progress.NONE).distance2(), "2 dimensions, " + n);
    }
    for (int n = 2; n <= 8; n++) {
      assertEquals(three[n - 2], LatinHypercube.search(n, 3, 40, 1, Progress.NONE).distance2(), "3 dimensions, " + n);
    }
    for (int n = 2; n <= 6; n++) {
      assertEquals(four[n - 2], LatinHypercube.search(n, 4, 40, 1, Progress.NONE).distance2(), "4 dimensions, " + n);
    }
  }

  @Test
  void twentyPointsInSixDimensionsLieAsFarApartAsTheReferenceSearch() {
    // Source: optimumLHS of the R package lhs, best of 100: closest distance 0.739 of the unit cube (cells of 1/20).
    LatinHypercube.Points points = LatinHypercube.search(20, 6, 4, 7, Progress.NONE);
    assertTrue(Math.sqrt(points.distance2()) / 20 >= 0.739, Math.sqrt(points.distance2()) / 20 + "");
    for (int j = 0; j < 6; j++) {
      int column = j;
      assertEquals(20, Arrays.stream(points.levels()).mapToInt(p -> p[column]).distinct().count());
    }
  }

  @Test
  void wrongRequestsAreRefusedInWords() {
    assertThrows(IllegalArgumentException.class, () -> RegularFraction.best(12, 5));
    assertThrows(IllegalArgumentException.class, () -> PlackettBurman.design(measured(12), 12, 0));
    List<Factor> withOre = List.of(Factor.category("o", "ore", "bog", "rock", "sand"), Factor.measured("b", "blast", "", 0, 1));
    String message = assertThrows(IllegalArgumentException.class, () -> RegularFraction.best(4, 2).design(withOre, 0)).getMessage();
    assertTrue(message.contains("ore has 3 categories"), message);
  }
}
