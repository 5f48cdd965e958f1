package daubline.engine.design.judge;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.design.Change;
import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Model;
import daubline.engine.design.Progress;
import daubline.engine.design.Randomiser;
import daubline.engine.design.Run;
import daubline.engine.design.Space;
import daubline.engine.design.Strata;
import daubline.engine.design.catalogue.PlackettBurman;
import daubline.engine.design.catalogue.RegularFraction;
import daubline.engine.design.search.CoordinateExchange;
import daubline.engine.design.search.SearchRequest;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DesignReviewTest {

  // Source: noncentral t (R power routines): two-level effect in standard deviations, n trials, p unknowns, 5 %, 80 %.
  @ParameterizedTest
  @CsvSource({"8,4,2.66", "8,6,4.00", "12,6,1.94", "12,8,2.17", "16,6,1.55", "16,11,1.76", "24,7,1.21", "32,7,1.03", "40,8,.91"})
  void smallestDetectableEffect(int n, int p, double effect) {
    assertEquals(effect, Power.smallest(0.8, n - p, 0.05) * 2 / Math.sqrt(n), 0.0051);
  }

  private static List<Factor> factors(int k) {
    return IntStream.range(0, k).mapToObj(i -> Factor.measured("f" + i, "f" + i, "", -1, 1).on(-1, 1)).toList();
  }

  @Test
  void halfFractionIsReviewedAsTheTextbookSays() {
    List<Factor> factors = factors(4);
    Design design = RegularFraction.best(8, 4).design(factors, 0);
    DesignReview review = DesignReview.of(design, Model.main(factors), new Space(factors, List.of()), Strata.NONE);
    assertEquals(3, review.freedom().trials());
    DesignReview.EffectReview first = review.effects().get(0);
    assertEquals(2 / Math.sqrt(8), first.standardError(), 1e-12);
    assertTrue(review.aliases().isEmpty(), "main effects of resolution IV are free of interactions of two");
    for (double h : review.leverage()) {
      assertEquals(5 / 8.0, h, 1e-12);
    }
    assertEquals(5 / 8.0, review.prediction().average(), 1e-12);
    double ab = review.correlations().values()[4][9];
    assertEquals(1, Math.abs(ab), 1e-12);
    assertEquals(List.of("f0 × f1", "f2 × f3"), List.of(review.correlations().names().get(4), review.correlations().names().get(9)));
  }

  @Test
  void plackettBurmanMixesMainEffectsByAThird() {
    List<Factor> factors = factors(5);
    DesignReview review = DesignReview.of(PlackettBurman.design(factors, 12, 0), Model.main(factors), new Space(factors, List.of()),
        Strata.NONE);
    assertTrue(review.aliases().stream().allMatch(a -> Math.abs(Math.abs(a.share()) - 1 / 3.0) < 1e-9));
    assertEquals(30, review.aliases().size(), "each of five with the six interactions of the other four");
  }

  @Test
  void losingARunOfASaturatedDesignLosesAnEffect() {
    List<Factor> factors = factors(3);
    Design design = RegularFraction.best(4, 3).design(factors, 0);
    DesignReview review = DesignReview.of(design, Model.main(factors), new Space(factors, List.of()), Strata.NONE);
    assertTrue(review.lost().stream().allMatch(l -> l.lost().size() == 1 && l.information() == 0));
    assertTrue(codes(review).containsAll(Set.of("design.no-spare", "design.no-error", "design.aliased")));
    Design full = new RegularFraction(3).design(factors, 0);
    DesignReview spare = DesignReview.of(full, Model.main(factors), new Space(factors, List.of()), Strata.NONE);
    // deleting one of 2³: det falls to (1 − 4/8) of it, the variance of an effect grows to 1/8 + (1/8)²/(1 − 1/2) = 1.25/8
    assertEquals(Math.pow(0.5, 0.25), spare.lost().get(0).information(), 1e-12);
    assertEquals(Math.sqrt(1.25), spare.lost().get(0).widening(), 1e-12);
  }

  private static Set<String> codes(DesignReview review) {
    Set<String> codes = new HashSet<>();
    review.findings().forEach(f -> codes.add(f.code()));
    return codes;
  }

  private static final List<Factor> FURNACE = List.of(Factor.measured("h", "height", "m", .6, 1.2).changing(Change.EACH_FURNACE),
      Factor.measured("b", "blast", "L/min", 200, 600));

  @Test
  void heightIsConfoundedWithTwoFurnaces() {
    Design design = new Design("two furnaces", FURNACE, List.of(new Run(new double[] {-1, -1}, 0, 0, false),
        new Run(new double[] {-1, 1}, 0, 1, false), new Run(new double[] {1, -1}, 1, 2, false), new Run(new double[] {1, 1}, 1, 3, false)),
        List.of());
    DesignReview review = DesignReview.of(design, Model.main(FURNACE), new Space(FURNACE, List.of()), Strata.USUAL);
    assertTrue(codes(review).containsAll(Set.of("design.confounded", "design.furnace-error")));
    assertEquals("furnace", review.effects().get(0).stratum());
    assertEquals(0, review.effects().get(0).freedom());
    assertEquals(Double.POSITIVE_INFINITY, review.effects().get(0).smallest());
    assertEquals(1, review.freedom().trials());
    String text = review.findings().get(0).toString();
    assertTrue(text.contains("height") && text.contains("confounded with the furnace"), text);
  }

  @Test
  void fourFurnacesLeaveTwoDegreesForHeight() {
    Space space = new Space(FURNACE, List.of());
    Design design = CoordinateExchange.search(SearchRequest.inFurnaces(space, Model.main(FURNACE), 8, 4, Strata.USUAL, 1),
        Progress.NONE).design();
    DesignReview review = DesignReview.of(design, Model.main(FURNACE), space, Strata.USUAL);
    assertEquals(2, review.effects().get(0).freedom());
    assertEquals(3, review.effects().get(1).freedom());
    // variance of a furnace's mean of two: η + 1/2; height contrasts four furnaces: effect error 2·√(1.5/4)
    assertEquals(2 * Math.sqrt(1.5 / 4), review.effects().get(0).standardError(), 1e-9);
    assertEquals(2 * Math.sqrt(1 / 8.0), review.effects().get(1).standardError(), 1e-9);
  }

  @Test
  void randomOrderKeepsFurnacesTogetherAndRepeats() {
    Space space = new Space(FURNACE, List.of());
    Design design = CoordinateExchange.search(SearchRequest.inFurnaces(space, Model.main(FURNACE), 9, 3, Strata.USUAL, 1)
        .withStarts(5), Progress.NONE).design();
    Randomiser.Plan plan = Randomiser.order(design, 77);
    assertArrayEquals(plan.from(), Randomiser.order(design, 77).from());
    assertArrayEquals(new int[] {0, 0, 0, 1, 1, 1, 2, 2, 2}, plan.design().furnaces());
    assertArrayEquals(IntStream.range(0, 9).toArray(), IntStream.of(plan.from()).sorted().toArray());
    for (int i = 0; i < 9; i++) {
      assertArrayEquals(design.settings().get(plan.from()[i]), plan.design().settings().get(i));
    }
    assertTrue(plan.restriction().contains("height stays as built"), plan.restriction());
    Set<String> orders = new HashSet<>();
    for (int seed = 0; seed < 40; seed++) {
      orders.add(Arrays.toString(Randomiser.order(design, seed).from()));
    }
    assertTrue(orders.size() > 35);
    assertNotEquals(1, orders.size());
  }

  @Test
  void everyOrderOfThreeTrialsIsEquallyLikely() {
    Design design = Design.independent("three", factors(1), new double[][] {{-1}, {1}, {-1}});
    java.util.Map<String, Integer> counts = new java.util.TreeMap<>();
    for (int seed = 0; seed < 6000; seed++) {
      counts.merge(Arrays.toString(Randomiser.order(design, seed).from()), 1, Integer::sum);
    }
    assertEquals(6, counts.size());
    double chi = counts.values().stream().mapToDouble(c -> (c - 1000.0) * (c - 1000) / 1000).sum();
    assertTrue(chi < 20.5, "chi squared with 5 degrees of freedom, 0.1 %: " + chi);
  }
}
