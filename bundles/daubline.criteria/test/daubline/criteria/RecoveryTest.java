package daubline.criteria;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
import daubline.engine.inference.ScoreTable;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Verdict;
import daubline.engine.stats.RandomStream;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Simulated furnaces of known truth, with measuring error, smelt-to-smelt scatter of one tolerance, truncated heights,
 * values below a limit and missing fields. The standard for every figure is the probability the engine itself states.
 */
class RecoveryTest {

  private static final int CASES = 600;
  private static final int RIVALS = 4;
  private static final ComparisonSettings SETTINGS = ComparisonSettings.standard().with(400, 11, 1);
  private static final String[] OXIDES = {"SiO2", "Al2O3", "FeO", "CaO", "MgO"};

  private record Truth(double diameter, double bore, double wall, double[] slag) {
    static Truth draw(RandomStream r) {
      return new Truth(0.3 + 0.03 * r.normal(), 0.03 + 0.006 * r.normal(), 0.15 + 0.03 * r.normal(),
          new double[] {25 * Math.exp(0.2 * r.normal()), 6 * Math.exp(0.2 * r.normal()), 60, 2.5 * Math.exp(0.3 * r.normal()), Math.exp(0.3 * r.normal())});
    }
  }

  /** One record of a truth: a trial scatters by the tolerance and its reading, evidence by its reading only. */
  private static SheetData record(String id, Truth truth, RandomStream r, boolean trial) {
    double scatter = trial ? 1 : 0;
    SheetBuilder sheet = SheetBuilder.sheet(id)
        .says("base_internal_diameter", Amount.plusMinus(truth.diameter + 0.02 * scatter * r.normal() + 0.01 * r.normal(), 0.01))
        .says("wall_thickness", Amount.plusMinus(truth.wall + 0.025 * scatter * r.normal() + 0.01 * r.normal(), 0.01))
        .says("surviving_height", trial ? Amount.exact(0.5 + 0.06 * r.normal()) : Amount.atLeast(0.1 + 0.1 * r.uniform()));
    Amount bore = Amount.plusMinus(truth.bore + 0.004 * scatter * r.normal() + 0.001 * r.normal(), 0.001);
    sheet.says("inlet_bore", !trial && r.below(3) == 0 ? Amount.of(ValueKind.NOT_PRESERVED) : bore);
    Object[] analysis = new Object[2 * OXIDES.length];
    for (int i = 0; i < OXIDES.length; i++) {
      double value = truth.slag[i] * Math.exp(0.15 * scatter * r.normal() + 0.03 * r.normal());
      analysis[2 * i] = OXIDES[i];
      analysis[2 * i + 1] = OXIDES[i].equals("MgO") && value < 0.9 ? Amount.belowLimit(0.009) : (Object) value;
    }
    return sheet.slag(IronBasis.FEO, analysis).build();
  }

  /** Verdicts on true reproductions are "not consistent" about as often as the limit of 0.05 says, never much more. */
  @Test
  void errorRateOfVerdicts() {
    RandomStream r = new RandomStream(RandomStream.key(3, "verdicts"));
    int tested = 0;
    int against = 0;
    for (int i = 0; i < CASES; i++) {
      Truth truth = Truth.draw(r);
      Comparison c = ComparisonEngine.compare(List.of(record("t" + i, truth, r, true)), List.of(record("e" + i, truth, r, false)),
          Criteria.all(), SETTINGS).get(0);
      for (CriterionResult result : c.criteria()) {
        if (List.of("base_internal_diameter", "wall_thickness", "inlet_bore", "slag_composition").contains(result.criterion()) && result.isTested()) {
          tested++;
          against += result.verdict() == Verdict.NOT_CONSISTENT ? 1 : 0;
        }
      }
    }
    double rate = (double) against / tested;
    assertEquals(0.05, rate, 0.02, "of " + tested + " verdicts");
  }

  /**
   * The band of a true reproduction holds about nine in ten of them, although three criteria read the same slag: what they
   * share is drawn once.
   */
  @Test
  void bandHoldsTrueReproductions() {
    RandomStream r = new RandomStream(RandomStream.key(4, "band"));
    int inside = 0;
    for (int i = 0; i < CASES; i++) {
      Truth truth = Truth.draw(r);
      Comparison c = ComparisonEngine.compare(List.of(record("t" + i, truth, r, true)), List.of(record("e" + i, truth, r, false)),
          Criteria.all(), SETTINGS).get(0);
      inside += c.agreement() >= c.bandLow() && c.agreement() <= c.bandHigh() ? 1 : 0;
    }
    assertEquals(0.90, (double) inside / CASES, 0.03);
  }

  /** The true recipe comes first more often the higher the first-rank share stated for it, and on the whole as often. */
  @Test
  void firstRankSharesAreCalibrated() {
    RandomStream r = new RandomStream(RandomStream.key(5, "ranks"));
    int cases = 250;
    double first = 0;
    double stated = 0;
    for (int i = 0; i < cases; i++) {
      List<Truth> truths = new ArrayList<>();
      List<SheetData> trials = new ArrayList<>();
      for (int k = 0; k < RIVALS; k++) {
        truths.add(Truth.draw(r));
        trials.add(record("case" + i + "t" + k, truths.get(k), r, true));
      }
      int right = r.below(RIVALS);
      Ranking ranking = new RankingEngine(Criteria.all(), SETTINGS).rank(trials, record("e" + i, truths.get(right), r, false), Progress.NONE);
      Ranking.Place place = ranking.places().stream().filter(p -> p.trial().endsWith("t" + right)).findFirst().orElseThrow();
      first += place.rank() == 1 ? 1 : 0;
      stated += place.acceptability()[0];
    }
    assertTrue(first / cases > 0.6, "first in " + first / cases);
    assertEquals(stated / cases, first / cases, 0.12);
  }

  /** The table of scores holds the numbers of the comparison in words. */
  @Test
  void tableAndWordsAgree() {
    RandomStream r = new RandomStream(8);
    List<SheetData> trials = new ArrayList<>();
    List<SheetData> sheets = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      Truth truth = Truth.draw(r);
      trials.add(record("t" + i, truth, r, true));
      sheets.add(record("e" + i, truth, r, false));
    }
    ScoreTable table = new ComparisonEngine(Criteria.all(), SETTINGS.with(400, 11, 2)).scores(trials, sheets, Progress.NONE);
    List<Comparison> words = ComparisonEngine.compare(trials, sheets, Criteria.all(), SETTINGS);
    for (int t = 0; t < 5; t++) {
      for (int s = 0; s < 5; s++) {
        Comparison c = words.get(5 * t + s);
        assertEquals(c.agreement(), table.agreement()[t][s], 1e-9);
        assertEquals(c.low(), table.low()[t][s], 1e-9);
        assertEquals(c.high(), table.high()[t][s], 1e-9);
        assertEquals(c.coverage(), table.coverage()[t][s], 1e-12);
      }
    }
  }
}
