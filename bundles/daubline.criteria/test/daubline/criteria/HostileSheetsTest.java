package daubline.criteria;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Amount;
import daubline.base.IronBasis;
import daubline.base.Material;
import daubline.base.ValueKind;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.engine.inference.Assessment;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.ComparisonEngine;
import daubline.engine.inference.ComparisonSettings;
import daubline.engine.inference.Criterion;
import daubline.engine.inference.CriterionResult;
import daubline.engine.inference.Equifinality;
import daubline.engine.inference.Exclusion;
import daubline.engine.inference.Progress;
import daubline.engine.inference.Ranking;
import daubline.engine.inference.RankingEngine;
import daubline.engine.inference.SettingValues;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.SheetGroup;
import daubline.engine.inference.Statement;
import daubline.engine.inference.Verdict;
import daubline.engine.stats.RandomStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Sheets as people fill them in: every kind of statement, contradictions, zeros, limits, nonsense; seeded. */
class HostileSheetsTest {

  private static final ComparisonSettings SETTINGS = ComparisonSettings.standard().with(100, 7, 1);
  private static final String[] OXIDES = {"SiO2", "Al2O3", "FeO", "Fe2O3", "Fe", "CaO", "MgO", "MnO", "K2O", "TiO2", "P2O5", "Unobtainium"};
  private static final List<ValueKind> WORDLESS = List.of(ValueKind.PRESENT, ValueKind.ABSENT, ValueKind.NOT_LOOKED_FOR, ValueKind.NOT_PRESERVED,
      ValueKind.NOT_RECORDED, ValueKind.NOT_WEIGHED);

  private static double magnitude(RandomStream r) {
    return r.below(8) == 0 ? 0 : Math.exp(3 * r.normal()) * (r.below(20) == 0 ? -1 : 1);
  }

  private static Amount number(RandomStream r) {
    double a = magnitude(r);
    double b = magnitude(r);
    return switch (r.below(7)) {
      case 0 -> Amount.exact(a);
      case 1 -> Amount.plusMinus(a, Math.abs(b));
      case 2 -> Amount.range(Math.min(a, b), Math.max(a, b));
      case 3 -> Amount.atLeast(a);
      case 4 -> Amount.atMost(a);
      case 5 -> Amount.belowLimit(a);
      default -> Amount.of(WORDLESS.get(r.below(WORDLESS.size())));
    };
  }

  private static Amount any(Variable variable, RandomStream r) {
    if (variable.words().isEmpty() || r.below(6) == 0) {
      return number(r);
    }
    String word = variable.words().get(r.below(variable.words().size()));
    return Amount.category(switch (r.below(4)) {
      case 0 -> word + ":0.7; something else:0.3";
      case 1 -> "a word of their own";
      default -> word;
    });
  }

  private static SheetData sheet(String id, RandomStream r) {
    SheetBuilder sheet = SheetBuilder.sheet(id).sampled(r.below(3) == 0 ? Double.NaN : r.uniform());
    for (Variable variable : Variables.standard().at(Variable.Place.REMAINS)) {
      for (int i = r.below(4); i > 0; i--) {
        sheet.says(variable.id(), any(variable, r), r.below(5) == 0);
      }
    }
    for (int i = r.below(6); i > 0; i--) {
      sheet.residue("class" + r.below(4), number(r), r.below(40) - 1);
    }
    for (int i = r.below(12); i > 0; i--) {
      List<Object> parts = new ArrayList<>();
      for (String oxide : OXIDES) {
        if (r.below(3) > 0) {
          parts.add(oxide);
          parts.add(r.below(3) == 0 ? number(r) : (Object) Math.abs(magnitude(r)));
        }
      }
      sheet.analysis(Material.values()[r.below(Material.values().length)], IronBasis.values()[r.below(IronBasis.values().length)], parts.toArray());
    }
    return sheet.build();
  }

  private static void check(Comparison c) {
    if (c.isTested()) {
      assertTrue(c.low() >= 0 && c.low() <= c.agreement() && c.agreement() <= c.high() && c.high() <= 100 + 1e-9, () -> c.toString());
      assertTrue(c.bandLow() >= 0 && c.bandLow() <= c.bandHigh() && c.bandHigh() <= 100 + 1e-9, () -> c.toString());
    } else {
      assertTrue(Double.isNaN(c.agreement()));
    }
    assertTrue(c.coverage() >= 0 && c.coverage() <= 1 + 1e-12 && c.boundLow() <= c.boundHigh() + 1e-9, () -> c.toString());
    for (CriterionResult r : c.criteria()) {
      assertFalse(r.reason().isBlank(), r.criterion());
      assertFalse(r.reason().contains("NaN") || r.evidence().contains("NaN") || r.found().contains("NaN"), () -> r.criterion() + ": " + r.reason() + " " + r.evidence() + r.found());
      assertEquals(r.verdict() == Verdict.NOT_TESTED, Double.isNaN(r.agreement()), r.criterion());
      assertTrue(!r.isTested() || r.agreement() >= 0 && r.agreement() <= 1 && r.compatibility() >= 0 && r.compatibility() <= 1, () -> r.toString());
    }
    Exclusion exclusion = Exclusion.of(c, 0.05);
    assertTrue(Double.isNaN(exclusion.probability()) || exclusion.probability() >= 0 && exclusion.probability() <= 1);
  }

  @Test
  void everySheetGivesAnAnswer() {
    RandomStream r = new RandomStream(RandomStream.key(11, "hostile"));
    for (int round = 0; round < 40; round++) {
      List<SheetData> trials = new ArrayList<>();
      List<SheetData> sheets = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        trials.add(sheet("t" + round + i, r));
        sheets.add(sheet("e" + round + i, r));
      }
      sheets.add(SheetGroup.of("group", "Group", sheets));
      sheets.add(SheetBuilder.sheet("empty").build());
      ComparisonEngine.compare(trials, sheets, Criteria.all(), SETTINGS).forEach(HostileSheetsTest::check);
      for (SheetData sheet : sheets) {
        Ranking ranking = new RankingEngine(Criteria.all(), SETTINGS).rank(trials, sheet, Progress.NONE);
        ranking.places().forEach(p -> assertEquals(1, Arrays.stream(p.acceptability()).sum(), 1e-9));
        Equifinality.of(ranking, List.of(), Equifinality.SAME_RECIPE);
      }
    }
  }

  /** Every tolerance and every uncertainty zero: nothing is forgiven, and nothing breaks. */
  @Test
  void zeroTolerancesBreakNothing() {
    RandomStream r = new RandomStream(RandomStream.key(12, "zero"));
    Map<String, Map<String, String>> zero = new HashMap<>();
    Criteria.all().forEach(c -> c.settings().stream().filter(s -> s.isNumber())
        .forEach(s -> zero.computeIfAbsent(c.id(), id -> new HashMap<>()).put(s.key(), "0")));
    for (int i = 0; i < 30; i++) {
      SheetData trial = sheet("t" + i, r);
      ComparisonEngine.compare(List.of(trial), List.of(sheet("e" + i, r), trial), Criteria.all(), SETTINGS.with(zero)).forEach(HostileSheetsTest::check);
    }
  }

  /** Ten thousand removals of all claims about one variable: no criterion that does not read it says anything else. */
  @Test
  void removedClaimsTurnNoOtherVerdict() {
    RandomStream r = new RandomStream(RandomStream.key(14, "removed"));
    int removals = 0;
    while (removals < 10_000) {
      SheetData evidence = sheet("e" + removals, r);
      SheetData found = sheet("t" + removals, r);
      List<Assessment> before = Criteria.all().stream().map(c -> c.assess(evidence, found, SettingValues.standard(c))).toList();
      for (String variable : evidence.statements().keySet()) {
        Map<String, List<Statement>> less = new HashMap<>(evidence.statements());
        less.remove(variable);
        SheetData without = new SheetData(evidence.id(), evidence.name(), evidence.samplingFraction(), less, evidence.residues(), evidence.analyses());
        for (int c = 0; c < before.size(); c++) {
          Criterion criterion = Criteria.all().get(c);
          if (!criterion.inputs().contains(variable)) {
            assertEquals(verdict(before.get(c)), verdict(criterion.assess(without, found, SettingValues.standard(criterion))), criterion.id() + " without " + variable);
          }
        }
        removals++;
      }
    }
  }

  private static String verdict(Assessment assessment) {
    return assessment instanceof Assessment.Tested tested ? tested.kernel().log() + " " + tested.kernel().compatibility() : "not tested " + ((Assessment.NotTested) assessment).recoverable();
  }

  /** One trial, one sheet, nothing in common: all not tested, the bounds open, no rank. */
  @Test
  void nothingInCommon() {
    SheetData trial = SheetBuilder.sheet("t").says("bloom_mass", Amount.exact(3)).build();
    SheetData sheet = SheetBuilder.sheet("e").says("wall_thickness", Amount.exact(0.1)).says("inlet_bore", Amount.of(ValueKind.NOT_RECORDED)).build();
    Comparison c = ComparisonEngine.compare(List.of(trial), List.of(sheet), Criteria.all(), SETTINGS).get(0);
    check(c);
    assertEquals(0, c.coverage());
    assertEquals(100, c.boundHigh(), 1e-9);
    Ranking ranking = new RankingEngine(Criteria.all(), SETTINGS).rank(List.of(trial), sheet, Progress.NONE);
    assertEquals(List.of("t"), ranking.untested());
    assertFalse(Exclusion.of(c, 0.05).isRuledOut());
  }

  /** One trial against one sheet it agrees with comes first always. */
  @Test
  void oneTrialIsAlwaysFirst() {
    SheetData trial = SheetBuilder.sheet("t").says("wall_thickness", Amount.plusMinus(0.1, 0.01)).build();
    Ranking ranking = new RankingEngine(Criteria.all(), SETTINGS).rank(List.of(trial), trial, Progress.NONE);
    assertEquals(1, ranking.places().get(0).acceptability()[0], 1e-12);
    assertTrue(Double.isNaN(ranking.criteria().get(0).share()) || ranking.criteria().get(0).share() == 0);
  }

  /** Three hundred sheets, half of them empty. */
  @Test
  void threeHundredSheets() {
    RandomStream r = new RandomStream(RandomStream.key(13, "many"));
    List<SheetData> sheets = new ArrayList<>();
    for (int i = 0; i < 300; i++) {
      sheets.add(i % 2 == 0 ? sheet("e" + i, r) : SheetBuilder.sheet("e" + i).build());
    }
    List<Comparison> all = ComparisonEngine.compare(List.of(sheet("t", r)), sheets, Criteria.all(), SETTINGS);
    assertEquals(300, all.size());
    all.forEach(HostileSheetsTest::check);
  }

  /** A zero in a composition says nothing about a ratio: the oxide is left out, the others stay. */
  @Test
  void zeroOxidesLeaveTheComposition() {
    SheetData e = SheetBuilder.sheet("e").slag(IronBasis.FEO, "FeO", 60, "SiO2", 24, "CaO", 0, "MnO", Amount.of(ValueKind.NOT_RECORDED)).build();
    SheetData f = SheetBuilder.sheet("f").slag(IronBasis.FEO, "FeO", 60, "SiO2", 24, "CaO", 3, "MnO", 1).build();
    Comparison c = ComparisonEngine.compare(List.of(f), List.of(e), Criteria.all(), SETTINGS).get(0);
    CriterionResult slag = c.criteria().stream().filter(x -> x.criterion().equals("slag_composition")).findFirst().orElseThrow();
    assertEquals(1, slag.agreement(), 1e-12);
    assertTrue(slag.reason().startsWith("2 oxides"), slag.reason());
  }
}
