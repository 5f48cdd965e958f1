package daubline.criteria;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Amount;
import daubline.base.IronBasis;
import daubline.base.Probabilities;
import daubline.base.ValueKind;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.ComparisonEngine;
import daubline.engine.inference.ComparisonSettings;
import daubline.engine.inference.CriterionResult;
import daubline.engine.inference.Equifinality;
import daubline.engine.inference.Progress;
import daubline.engine.inference.Ranking;
import daubline.engine.inference.RankingEngine;
import daubline.engine.inference.Recipe;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.SheetGroup;
import daubline.engine.inference.Verdict;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Several sheets as a group, repeats among each other, and recipes that agree equally well. */
class GroupingTest {

  private static SheetData furnace(String id, double diameter, String shape) {
    return SheetBuilder.sheet(id).says("base_internal_diameter", Amount.exact(diameter)).says("base_profile_shape", Amount.category(shape))
        .says("surviving_height", Amount.atLeast(0.1)).says("tapped_slag", Amount.of(ValueKind.PRESENT)).build();
  }

  /** Three features 0.28, 0.30, 0.32: s = 0.02, t(.975; 2) = 4.3027, sigma = 0.02·√(4/3)·4.3027/1.96. */
  @Test
  void oneMoreFeatureOfTheGroup() {
    SheetData group = SheetGroup.of("site", "Site", List.of(furnace("a", 0.28, "round"), furnace("b", 0.30, "round"), furnace("c", 0.32, "oval")));
    Amount diameter = group.about("base_internal_diameter").get(0).amount();
    assertEquals(0.30, diameter.value(), 1e-12);
    assertEquals(0.02 * Math.sqrt(4 / 3.0) * 4.30265273 / 1.959963985, diameter.sigma(), 1e-7);
    assertEquals(2 / 3.0, Probabilities.of(group.about("base_profile_shape").get(0).amount()).get("round"), 1e-5);
    assertEquals(3, group.about("surviving_height").size());
    assertTrue(group.about("base_internal_diameter").get(0).trail().from().size() == 3);
  }

  @Test
  void orderOfFeaturesChangesNothing() {
    SheetData a = furnace("a", 0.28, "round");
    SheetData b = furnace("b", 0.31, "oval");
    assertEquals(SheetGroup.of("s", "s", List.of(a, b)), SheetGroup.of("s", "s", List.of(b, a)));
  }

  @Test
  void aGroupOfOneIsItself() {
    SheetData a = furnace("a", 0.28, "round");
    SheetData group = SheetGroup.of("a", "a", List.of(a));
    assertEquals(a.statements(), group.statements());
  }

  /** Trial against trial needs no other engine: a trial agrees fully with itself, bar what is a matter of limits. */
  @Test
  void trialAgainstTrial() {
    SheetData one = SheetBuilder.sheet("t1").says("base_internal_diameter", Amount.exact(0.3)).says("inlet_bore", Amount.exact(0.03)).build();
    Comparison self = ComparisonEngine.compare(List.of(one), List.of(one), Criteria.all(), ComparisonSettings.standard().with(500, 1, 1)).get(0);
    assertEquals(100, self.agreement(), 1e-9);
  }

  /** Two recipes, deviations ±10 mm and ±20 mm: SS = 200 + 800 mm², 2 degrees, spread √500 mm. */
  @Test
  void spreadOfRepeats() {
    List<List<SheetData>> recipes = List.of(
        List.of(furnace("a", 0.29, "round"), furnace("b", 0.31, "round")), List.of(furnace("c", 0.38, "round"), furnace("d", 0.42, "round")));
    Repeats diameter = Repeats.of(recipes).stream().filter(r -> r.criterion().equals("base_internal_diameter")).findFirst().orElseThrow();
    assertEquals(Math.sqrt(500) / 1000, diameter.spread(), 1e-12);
    assertEquals(2, diameter.freedom());
    // chi-squared quantiles of 2 degrees: -2 ln(0.05) and -2 ln(0.95)
    assertEquals(diameter.spread() * Math.sqrt(2 / (-2 * Math.log(0.05))), diameter.low(), 1e-9);
    assertEquals(diameter.spread() * Math.sqrt(2 / (-2 * Math.log(0.95))), diameter.high(), 1e-9);
    ComparisonSettings settings = ComparisonSettings.standard().with(Repeats.asSettings(List.of(diameter)));
    assertEquals(List.of(), settings.check(Criteria.all()));
    // t(.975; 2) = 4.30265 of a printed table (NIST/SEMATECH e-Handbook 1.3.6.7.2: 4.303)
    assertEquals(diameter.spread() * 4.30265273 / 1.959963985, settings.of(new BaseInternalDiameter()).number("tolerance"), 1e-8);
  }

  /** Two trials that agree alike with recipes far apart are two recipes; with the same recipe they are one. */
  @Test
  void differentRecipesThatAgreeEqually() {
    SheetData evidence = furnace("e", 0.30, "round");
    List<SheetData> trials = List.of(
        SheetBuilder.sheet("t1").says("base_internal_diameter", Amount.plusMinus(0.305, 0.01)).build(),
        SheetBuilder.sheet("t2").says("base_internal_diameter", Amount.plusMinus(0.295, 0.01)).build(),
        SheetBuilder.sheet("t3").says("base_internal_diameter", Amount.plusMinus(0.60, 0.01)).build());
    Ranking ranking = new RankingEngine(Criteria.all(), ComparisonSettings.standard().with(2000, 3, 1)).rank(trials, evidence, Progress.NONE);
    List<Recipe> apart = List.of(recipe("t1", 0.8, "bog ore"), recipe("t2", 1.6, "siderite"), recipe("t3", 1.0, "bog ore"));
    assertEquals(2, Equifinality.of(ranking, apart, Equifinality.SAME_RECIPE).groups().size());
    List<Recipe> alike = List.of(recipe("t1", 0.80, "bog ore"), recipe("t2", 0.81, "bog ore"), recipe("t3", 1.6, "siderite"));
    Equifinality one = Equifinality.of(ranking, alike, Equifinality.SAME_RECIPE);
    assertEquals(1, one.groups().size());
    assertEquals(2, one.groups().get(0).size());
    assertTrue(one.sentence().startsWith("no different recipe"));
  }

  private static SheetData heap(String id, double tapped, double feo) {
    return SheetBuilder.sheet(id).sampled(1).residue("tap", Amount.exact(tapped)).residue("furnace", Amount.exact(10 - tapped))
        .slag(IronBasis.FEO, "FeO", feo, "SiO2", 25).build();
  }

  private static CriterionResult result(String criterion, SheetData trial, SheetData evidence) {
    return ComparisonEngine.compare(List.of(trial), List.of(evidence), Criteria.all(), ComparisonSettings.standard().with(200, 1, 1)).get(0).criteria().stream()
        .filter(c -> c.criterion().equals(criterion)).findFirst().orElseThrow();
  }

  /** Features that differ among themselves allow a trial that differs from their mean as much; features that are alike do not. */
  @Test
  void spreadBetweenFeaturesIsAllowedFor() {
    SheetData alike = SheetGroup.of("alike", "alike", List.of(heap("a", 5, 60), heap("b", 5.1, 60.5), heap("c", 4.9, 59.5)));
    SheetData unlike = SheetGroup.of("unlike", "unlike", List.of(heap("a", 2, 40), heap("b", 5, 60), heap("c", 8, 80)));
    SheetData trial = heap("t", 8, 85);
    for (String criterion : List.of("residue_shares", "slag_composition", "reducible_iron_index")) {
      assertTrue(result(criterion, trial, unlike).compatibility() > result(criterion, trial, alike).compatibility(), criterion);
      assertEquals(Verdict.CONSISTENT, result(criterion, trial, unlike).verdict(), criterion);
    }
    assertEquals(Verdict.NOT_CONSISTENT, result("residue_shares", heap("u", 9.8, 60), alike).verdict());
  }

  private static Recipe recipe(String trial, double height, String ore) {
    return new Recipe(trial, Map.of("furnace_height", height), Map.of("ore_type", ore));
  }
}
