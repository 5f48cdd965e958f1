package daubline.engine.design;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.design.search.Budget;
import daubline.engine.design.search.BudgetSearch;
import daubline.engine.design.search.CoordinateExchange;
import daubline.engine.design.search.CoordinateExchange.Found;
import daubline.engine.design.search.Criterion;
import daubline.engine.design.search.SearchRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoordinateExchangeTest {

  private static Found find(SearchRequest request) {
    return CoordinateExchange.search(request, Progress.NONE);
  }

  // Source: largest determinants of matrices of −1 and +1, OEIS A003433 (Hadamard's maximal determinant problem).
  @ParameterizedTest
  @CsvSource({"4,16", "5,48", "6,160", "7,576", "8,4096", "9,14336", "10,73728", "11,327680", "12,2985984"})
  void saturatedDesignsReachTheLargestDeterminant(int n, double determinant) {
    List<Factor> factors = IntStream.range(1, n).mapToObj(i -> Factor.measured("f" + i, "f" + i, "", -1, 1).on(-1, 1)).toList();
    Found found = find(SearchRequest.independent(new Space(factors, List.of()), Model.main(factors), n, 3).withStarts(400));
    assertEquals(2 * Math.log(determinant), found.logDeterminant(), 1e-9);
  }

  @Test
  void handbookExample() {
    // Source: NIST/SEMATECH e-Handbook 5.5.2.1: 12 of 20 candidates; D-efficiency 68.2558 %, A-efficiency 45.4545 %,
    // G-efficiency 100 %, average standard error of prediction over the candidates 0.6227.
    List<Factor> factors = List.of(Factor.measured("x1", "x1", "", -1, 1).on(-1, -.5, 0, .5, 1),
        Factor.measured("x2", "x2", "", -1, 1).on(-1, 1), Factor.measured("x3", "x3", "", -1, 1).on(-1, 1));
    Space space = new Space(factors, List.of());
    Model model = new Model(factors, List.of(Term.of(0), Term.of(1), Term.of(2), Term.of(0, 0)));
    Found found = find(SearchRequest.independent(space, model, 12, 1));
    assertEquals(0.6825575037, Math.exp(found.logDeterminant() / 5) / 12, 1e-9);
    double[][] inverse = daubline.engine.stats.Cholesky.of(daubline.engine.stats.Matrices.square(
        model.matrix(found.design().settings()))).inverse();
    double trace = IntStream.range(0, 5).mapToDouble(i -> inverse[i][i]).sum();
    assertEquals(0.454545, 5 / (12 * trace), 5e-7);
    java.util.DoubleSummaryStatistics errors = space.region().stream().mapToDouble(s -> {
      double[] x = model.row(s);
      return Math.sqrt(daubline.engine.stats.Matrices.dot(x, daubline.engine.stats.Matrices.times(inverse, x)));
    }).summaryStatistics();
    assertEquals(0.6227, errors.getAverage(), 5e-5);
    assertEquals(1, Math.sqrt(5 / 12.0) / errors.getMax(), 1e-9);
  }

  // Source: n = 6 Box & Draper 1971 (with δ = (4 − √13)/3); the others by the same search in R (optimisation from 3 levels).
  @ParameterizedTest
  @CsvSource({"6,267.7372192", "7,980.770216", "8,2361.729394", "9,5184", "10,9460.467178"})
  void exactQuadraticInTwoFactors(int n, double determinant) {
    Space space = new Space(CatalogueTest.measured(2), List.of());
    Found found = find(SearchRequest.independent(space, Model.quadratic(space.factors()), n, 5).withSteps(21, true));
    assertEquals(determinant, Math.exp(found.logDeterminant()), determinant * 1e-8);
  }

  // Source: complete enumeration of all multisets of the 18 candidates.
  @ParameterizedTest
  @CsvSource({"6,1296,7.333333333", "7,3456,7.243055556", "8,9072,6.857142857"})
  void mixedLevels(int n, double determinant, double average) {
    List<Factor> factors = List.of(Factor.category("o", "ore", "bog", "rock", "sand"), Factor.category("t", "tuyere", "one", "two"),
        Factor.measured("h", "height", "", -1, 1).on(-1, 0, 1));
    Model model = new Model(factors, List.of(Term.of(0), Term.of(1), Term.of(2), Term.of(2, 2)));
    SearchRequest request = SearchRequest.independent(new Space(factors, List.of()), model, n, 1);
    assertEquals(determinant, Math.exp(find(request).logDeterminant()), determinant * 1e-9);
    assertEquals(average, n * find(request.with(Criterion.PREDICTION)).averageVariance(), 1e-8);
  }

  // Source: complete enumeration; whole-plot factor of two levels, two sub-plot factors of two levels, four furnaces.
  @ParameterizedTest
  @CsvSource({"2,0,4096,false", "2,0.5,1024,false", "2,1,455.1111111,false", "2,5,33.85123967,false", "2,10,9.287981859,false",
      "2,1,29127.11111,true", "2,10,594.430839,true", "3,1,123904,true"})
  void furnacesAsWholePlots(int size, double eta, double determinant, boolean interactions) {
    List<Factor> factors = List.of(Factor.category("w", "w", "a", "b").changing(Change.EACH_FURNACE),
        Factor.category("s", "s", "a", "b"), Factor.category("t", "t", "a", "b"));
    List<Term> terms = new ArrayList<>(List.of(Term.of(0), Term.of(1), Term.of(2)));
    if (interactions) {
      terms.addAll(List.of(Term.of(0, 1), Term.of(0, 2)));
    }
    Found found = find(SearchRequest.inFurnaces(new Space(factors, List.of()), new Model(factors, terms), 4 * size, 4,
        new Strata(eta, 0), 1));
    assertEquals(determinant, Math.exp(found.logDeterminant()), determinant * 1e-8);
    assertEachFurnaceIsOne(found.design(), 0);
    if (size == 2 && eta > 0 && !interactions) {
      // enumeration also says that each furnace then gets a pair with both settings reversed
      List<double[]> s = found.design().settings();
      for (int f = 0; f < 8; f += 2) {
        assertTrue(s.get(f)[1] != s.get(f + 1)[1] && s.get(f)[2] != s.get(f + 1)[2], "furnace " + f / 2);
      }
    }
  }

  // Source: complete enumeration; full quadratic in one whole-plot and one sub-plot factor of three levels.
  @ParameterizedTest
  @CsvSource({"4,2,0,1904", "4,2,1,56.69135802", "4,2,10,0.1480041752", "3,3,1,81"})
  void quadraticWithFurnaces(int furnaces, int size, double eta, double determinant) {
    List<Factor> factors = List.of(Factor.measured("w", "w", "", -1, 1).on(-1, 0, 1).changing(Change.EACH_FURNACE),
        Factor.measured("s", "s", "", -1, 1).on(-1, 0, 1));
    Found found = find(SearchRequest.inFurnaces(new Space(factors, List.of()), Model.quadratic(factors), furnaces * size,
        furnaces, new Strata(eta, 0), 1));
    assertEquals(determinant, Math.exp(found.logDeterminant()), determinant * 1e-8);
  }

  private static void assertEachFurnaceIsOne(Design design, int factor) {
    for (Run a : design.runs()) {
      for (Run b : design.runs()) {
        assertTrue(a.furnace() != b.furnace() || a.setting()[factor] == b.setting()[factor]);
      }
    }
  }

  @Test
  void augmentationFindsTheOtherHalf() {
    // Source: complete enumeration; the half fraction I = +ABC and four more for all interactions of two: det = 8^7.
    List<Factor> factors = IntStream.range(0, 3).mapToObj(i -> Factor.category("f" + i, "f" + i, "a", "b")).toList();
    List<Run> done = List.of(new Run(new double[] {1, 0, 0}, 0, 0, true), new Run(new double[] {0, 1, 0}, 1, 1, true),
        new Run(new double[] {0, 0, 1}, 2, 2, true), new Run(new double[] {1, 1, 1}, 3, 3, true));
    int[] own = {4, 5, 6, 7};
    SearchRequest request = new SearchRequest(new Space(factors, List.of()), Model.interactions(factors), Criterion.EFFECTS,
        Strata.NONE, done, own, own, 20, 1, 2, false);
    Found found = find(request);
    assertEquals(2097152, Math.exp(found.logDeterminant()), 1e-6);
    for (int i = 0; i < 4; i++) {
      assertArrayEquals(done.get(i).setting(), found.design().settings().get(i));
    }
  }

  @Test
  void twoStrataKeepFurnaceAndDayTogether() {
    List<Factor> factors = List.of(Factor.measured("h", "height", "m", .6, 1.2).changing(Change.EACH_FURNACE),
        Factor.category("c", "crew", "a", "b").changing(Change.EACH_DAY), Factor.measured("b", "blast", "L/min", 200, 600));
    int[] furnaces = {0, 0, 1, 1, 2, 2, 3, 3};
    int[] days = {0, 1, 0, 1, 2, 3, 2, 3};
    SearchRequest request = new SearchRequest(new Space(factors, List.of()), Model.main(factors), Criterion.EFFECTS,
        new Strata(1, 0.5), List.of(), furnaces, days, 30, 1, 3, false);
    Design design = find(request).design();
    assertEachFurnaceIsOne(design, 0);
    for (Run a : design.runs()) {
      assertTrue(design.runs().stream().allMatch(b -> a.day() != b.day() || a.setting()[1] == b.setting()[1]));
    }
    double balance = design.runs().stream().mapToDouble(r -> r.setting()[0] * r.setting()[2]).sum();
    assertEquals(0, balance, 1e-9);
  }

  @Test
  void forbiddenSettingsAreNeverBurntAndTheBestBesideThemAreFound() {
    List<Factor> factors = CatalogueTest.measured(2);
    Space space = new Space(factors, List.of(Rule.never("chokes", Condition.atLeast("f0", 0.4), Condition.atLeast("f1", 0.4))));
    for (Criterion criterion : Criterion.values()) {
      Found found = find(SearchRequest.independent(space, Model.quadratic(factors), 9, 2).with(criterion).withSteps(11, false));
      assertTrue(found.design().settings().stream().allMatch(space::allows));
      assertTrue(found.logDeterminant() > Math.log(600), "far below the unconstrained 5184");
    }
  }

  @Test
  void sameSeedSameDesignWhateverTheThreads() throws Exception {
    Space space = new Space(CatalogueTest.measured(4), List.of());
    SearchRequest request = SearchRequest.independent(space, Model.quadratic(space.factors()), 20, 11).withStarts(24);
    double[][] alone = settings(new ForkJoinPool(1).submit(() -> find(request)).get());
    double[][] many = settings(new ForkJoinPool(7).submit(() -> find(request)).get());
    assertArrayEquals(alone, many);
  }

  private static double[][] settings(Found found) {
    return found.design().settings().toArray(double[][]::new);
  }

  @Test
  void sixThreeLevelFactorsBeatTheReferenceAtLessTime() {
    // Source: R AlgDesign optFederov, 40 of 3^6, 28 unknowns, 50 starts: D-efficiency 0.5002 in 0.94 s (bench table B04).
    List<Factor> factors = IntStream.range(0, 6).mapToObj(i -> Factor.measured("f" + i, "f" + i, "", -1, 1).on(-1, 0, 1)).toList();
    Found found = find(SearchRequest.independent(new Space(factors, List.of()), Model.quadratic(factors), 40, 1).withStarts(50));
    double efficiency = Math.exp(found.logDeterminant() / 28) / 40;
    assertTrue(efficiency >= 0.5002, "D " + efficiency);
  }

  @Test
  void progressIsToldAndStops() {
    Space space = new Space(CatalogueTest.measured(4), List.of());
    SearchRequest request = SearchRequest.independent(space, Model.quadratic(space.factors()), 20, 11).withStarts(24);
    double[] last = new double[1];
    CoordinateExchange.search(request, new Progress() {
      @Override
      public synchronized void done(double share) {
        last[0] = Math.max(last[0], share);
      }

      @Override
      public boolean cancelled() {
        return false;
      }
    });
    assertEquals(1, last[0]);
    assertThrows(CancellationException.class, () -> CoordinateExchange.search(request, new Progress() {
      @Override
      public void done(double share) {
        // not reached
      }

      @Override
      public boolean cancelled() {
        return true;
      }
    }));
  }

  @Test
  void budgetDecidesHowManyFurnacesAreBuilt() {
    List<Factor> factors = List.of(Factor.measured("h", "height", "m", .6, 1.2).changing(Change.EACH_FURNACE),
        Factor.measured("b", "blast", "L/min", 200, 600), Factor.category("o", "ore", "bog", "rock"));
    Budget budget = new Budget(24, 3, 1.5, 12, 3);
    assertEquals(List.of(new Budget.Split(1, 3), new Budget.Split(2, 6), new Budget.Split(3, 9), new Budget.Split(4, 8),
        new Budget.Split(5, 6)), budget.splits());
    List<BudgetSearch.Option> options = BudgetSearch.search(new Space(factors, List.of()), Model.main(factors), budget,
        Criterion.EFFECTS, Strata.USUAL, List.of(), 1, 10, 1, Progress.NONE);
    assertTrue(options.get(0).split().furnaces() == 4, "four furnaces burnt twice balance height: " + options.get(0).split());
    assertTrue(options.stream().noneMatch(o -> o.split().furnaces() == 1), "one furnace cannot show an effect of height");
  }

  @Test
  void tooFewTrialsAreRefusedInWords() {
    Space space = new Space(CatalogueTest.measured(3), List.of());
    String message = assertThrows(IllegalArgumentException.class,
        () -> SearchRequest.independent(space, Model.quadratic(space.factors()), 8, 1)).getMessage();
    assertTrue(message.contains("10 unknowns") && message.contains("8 trials"), message);
  }
}
