package daubline.criteria;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Amount;
import daubline.base.IronBasis;
import daubline.base.ValueKind;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.ComparisonEngine;
import daubline.engine.inference.ComparisonSettings;
import daubline.engine.inference.CriterionResult;
import daubline.engine.inference.Progress;
import daubline.engine.inference.Ranking;
import daubline.engine.inference.RankingEngine;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Verdict;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

/** The engine over whole sheets; the numbers are invented, the properties are those of the method. */
class ComparisonEngineTest {

  private static final ComparisonSettings SETTINGS = ComparisonSettings.standard().with(2000, 7, 1);

  private static SheetData trial(String id, double diameter, double bore, double silica) {
    return SheetBuilder.sheet(id).says("base_internal_diameter", Amount.plusMinus(diameter, 0.005)).says("inlet_bore", Amount.plusMinus(bore, 0.001))
        .says("surviving_height", Amount.exact(0.4)).says("tapped_slag", Amount.of(ValueKind.PRESENT))
        .residue("tap", Amount.plusMinus(6, 0.1)).residue("furnace", Amount.plusMinus(3, 0.1))
        .slag(IronBasis.FEO, "FeO", 60, "SiO2", silica, "Al2O3", 6, "CaO", 2.5).build();
  }

  private static List<SheetData> trials() {
    return List.of(trial("t1", 0.31, 0.028, 25), trial("t2", 0.40, 0.022, 30), trial("t3", 0.29, 0.03, 18));
  }

  private static SheetData evidence() {
    return SheetBuilder.sheet("e1").says("base_internal_diameter", Amount.plusMinus(0.30, 0.01)).says("inlet_bore", Amount.range(0.025, 0.03))
        .says("surviving_height", Amount.exact(0.18)).says("tapped_slag", Amount.of(ValueKind.PRESENT))
        .says("wall_thickness", Amount.of(ValueKind.NOT_PRESERVED)).residue("tap", Amount.exact(20)).residue("furnace", Amount.exact(11))
        .slag(IronBasis.FEO, "FeO", 62, "SiO2", 24, "Al2O3", 6.5, "CaO", Amount.belowLimit(0.03)).build();
  }

  private static List<Comparison> compare(List<SheetData> trials, ComparisonSettings settings) {
    return ComparisonEngine.compare(trials, List.of(evidence()), Criteria.all(), settings);
  }

  private static CriterionResult result(Comparison comparison, String criterion) {
    return comparison.criteria().stream().filter(c -> c.criterion().equals(criterion)).findFirst().orElseThrow();
  }

  @Test
  void agreementStandsWithCoverageIntervalAndBand() {
    Comparison c = compare(trials(), SETTINGS).get(0);
    assertTrue(c.low() <= c.agreement() && c.agreement() <= c.high());
    assertTrue(c.boundLow() < c.agreement() && c.agreement() < c.boundHigh());
    assertTrue(c.coverage() > 0.1 && c.coverage() < 0.5);
    assertTrue(c.bandLow() < c.bandHigh() && c.bandHigh() < 100);
    assertEquals(1, c.criteria().stream().mapToDouble(CriterionResult::weight).sum(), 1e-12);
    assertEquals(Verdict.CONSISTENT, result(c, "base_internal_diameter").verdict());
    assertEquals(Verdict.NOT_CONSISTENT, result(compare(trials(), SETTINGS).get(1), "base_internal_diameter").verdict());
    assertEquals(Verdict.NOT_TESTED, result(c, "wall_thickness").verdict());
  }

  @Test
  void trailLeadsToEveryClaim() {
    String trail = result(compare(trials(), SETTINGS).get(0), "base_internal_diameter").trail().asText();
    assertTrue(trail.contains("Evidence") && trail.contains("As found") && trail.contains("Tolerance"), trail);
  }

  /** Threads, order of rows and default locale change nothing, to the last bit. */
  @Test
  void resultsDependOnContentOnly() {
    List<Comparison> once = compare(trials(), SETTINGS);
    assertEquals(once.toString(), compare(trials(), SETTINGS.with(2000, 7, 3)).toString());
    List<SheetData> shuffled = new ArrayList<>(trials());
    Collections.reverse(shuffled);
    List<Comparison> back = new ArrayList<>(compare(shuffled, SETTINGS));
    Collections.reverse(back);
    assertEquals(once.toString(), back.toString());
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      assertEquals(once.toString(), compare(trials(), SETTINGS).toString());
    } finally {
      Locale.setDefault(before);
    }
  }

  /** Leaving out one claim leaves every other result as it was. */
  @Test
  void removedClaimTurnsNoOtherVerdict() {
    SheetData less = SheetBuilder.sheet("e1").says("inlet_bore", Amount.range(0.025, 0.03)).says("surviving_height", Amount.exact(0.18))
        .says("tapped_slag", Amount.of(ValueKind.PRESENT)).residue("tap", Amount.exact(20)).residue("furnace", Amount.exact(11))
        .says("wall_thickness", Amount.of(ValueKind.NOT_PRESERVED))
        .slag(IronBasis.FEO, "FeO", 62, "SiO2", 24, "Al2O3", 6.5, "CaO", Amount.belowLimit(0.03)).build();
    Comparison with = compare(trials(), SETTINGS).get(0);
    Comparison without = ComparisonEngine.compare(trials(), List.of(less), Criteria.all(), SETTINGS).get(0);
    for (int i = 0; i < with.criteria().size(); i++) {
      if (!with.criteria().get(i).criterion().equals("base_internal_diameter")) {
        assertEquals(with.criteria().get(i).toString(), without.criteria().get(i).toString());
      }
    }
    assertTrue(without.coverage() < with.coverage());
  }

  @Test
  void orderOfContradictoryClaimsChangesNothing() {
    SheetData a = SheetBuilder.sheet("e").says("inlet_bore", Amount.exact(0.02)).says("inlet_bore", Amount.exact(0.03)).build();
    SheetData b = SheetBuilder.sheet("e").says("inlet_bore", Amount.exact(0.03)).says("inlet_bore", Amount.exact(0.02)).build();
    Comparison first = ComparisonEngine.compare(trials(), List.of(a), Criteria.all(), SETTINGS).get(0);
    Comparison second = ComparisonEngine.compare(trials(), List.of(b), Criteria.all(), SETTINGS).get(0);
    assertEquals(first.agreement(), second.agreement());
    assertEquals(first.low(), second.low());
    assertTrue(result(first, "inlet_bore").reason().contains("none is picked"));
    assertTrue(result(first, "inlet_bore").high() - result(first, "inlet_bore").low() > 0.5);
    SheetData picked = SheetBuilder.sheet("e").says("inlet_bore", Amount.exact(0.02)).says("inlet_bore", Amount.exact(0.03), true).build();
    Comparison third = ComparisonEngine.compare(trials(), List.of(picked), Criteria.all(), SETTINGS).get(0);
    assertEquals(Math.exp(-0.5 * 0.25), result(third, "inlet_bore").agreement(), 1e-12);
  }

  /** When nothing is uncertain, the interval closes on the point agreement. */
  @Test
  void certainMeasurementsCloseTheInterval() {
    SheetData certain = SheetBuilder.sheet("t").says("base_internal_diameter", Amount.exact(0.31)).says("inlet_bore", Amount.exact(0.028)).build();
    Comparison c = compare(List.of(certain), SETTINGS).get(0);
    assertEquals(c.low(), c.high(), 1e-9);
    assertEquals(c.agreement(), c.low(), 1e-9);
  }

  @Test
  void nothingTestedIsSaidHonestly() {
    Comparison c = compare(List.of(SheetBuilder.sheet("t").build()), SETTINGS).get(0);
    assertFalse(c.isTested());
    assertEquals(0, c.coverage());
    assertTrue(Double.isNaN(c.agreement()) && Double.isNaN(c.bandLow()));
    assertEquals(100, c.boundHigh());
  }

  @Test
  void wordsStayModest() {
    for (Comparison c : compare(trials(), SETTINGS)) {
      for (CriterionResult r : c.criteria()) {
        assertFalse((r.reason() + r.trail().asText() + r.verdict().word()).matches("(?is).*\\b(proved|proven|match(es)?|true(?! reproduction))\\b.*"), r.reason());
      }
    }
  }

  @Test
  void cancelReturnsNothing() {
    Progress stop = new Progress() {
      @Override
      public void done(int part, int all) {
        // nothing to show
      }

      @Override
      public boolean isCancelled() {
        return true;
      }
    };
    ComparisonEngine engine = new ComparisonEngine(Criteria.all(), SETTINGS.with(2000, 7, 2));
    assertThrows(CancellationException.class, () -> engine.compare(trials(), List.of(evidence()), stop));
  }

  @Test
  void unknownAndUnreadableSettingsAreFound() {
    ComparisonSettings settings = SETTINGS.with(Map.of("inlet_bore", Map.of("tolerance", "five"), "nothing", Map.of()));
    assertEquals(2, settings.check(Criteria.all()).size());
    assertThrows(IllegalArgumentException.class, () -> new ComparisonEngine(Criteria.all(), settings));
  }

  @Test
  void rankingKnowsItsStability() {
    Ranking ranking = new RankingEngine(Criteria.all(), SETTINGS).rank(trials(), evidence(), Progress.NONE);
    assertEquals(3, ranking.places().size());
    for (Ranking.Place place : ranking.places()) {
      double sum = 0;
      for (double share : place.acceptability()) {
        sum += share;
      }
      assertEquals(1, sum, 1e-9);
      place.wins().forEach((other, p) -> assertEquals(1 - p,
          ranking.places().stream().filter(o -> o.trial().equals(other)).findFirst().orElseThrow().wins().get(place.trial()), 1e-12));
    }
    assertEquals(1, ranking.criteria().stream().mapToDouble(Ranking.Discrimination::share).sum(), 1e-9);
    assertTrue(ranking.places().get(0).confidence() > 0.3);
    Ranking again = new RankingEngine(Criteria.all(), SETTINGS.with(2000, 7, 2)).rank(trials(), evidence(), Progress.NONE);
    assertEquals(ranking.places().get(0).acceptability()[0], again.places().get(0).acceptability()[0]);
  }
}
