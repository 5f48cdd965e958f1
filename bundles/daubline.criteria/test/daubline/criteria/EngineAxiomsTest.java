package daubline.criteria;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Amount;
import daubline.base.IronBasis;
import daubline.base.ValueKind;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.ComparisonEngine;
import daubline.engine.inference.ComparisonSettings;
import daubline.engine.inference.Criterion;
import daubline.engine.inference.CriterionResult;
import daubline.engine.inference.Pool;
import daubline.engine.inference.Progress;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Weights;
import daubline.engine.stats.RandomStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What must hold of whole comparisons, over 10 000 seeded pairs of sheets. Source: the definitions in the Javadoc. */
class EngineAxiomsTest {

  private static final int TRIALS = 100;
  private static final int SHEETS = 100;
  private static final ComparisonSettings SETTINGS = ComparisonSettings.standard().with(100, 5, 1);
  private static final List<String> NUMBERS = List.of("base_internal_diameter", "wall_thickness", "inlet_bore", "inlet_height_above_floor", "inlet_angle");
  private static final List<String> OXIDES = List.of("FeO", "SiO2", "Al2O3", "CaO", "MgO");
  private static final List<String> SHAPES = List.of("round", "oval");
  private static final List<String> CLASSES = List.of("tap", "furnace", "lining");

  private final RandomStream random = new RandomStream(RandomStream.key(77, "sheets"));

  /** A sheet with about two thirds of everything, in every kind of value; without the variable left out. */
  private SheetData sheet(String id, double uncertainty, String leftOut, RandomStream r) {
    SheetBuilder sheet = SheetBuilder.sheet(id);
    for (String variable : NUMBERS) {
      Amount amount = number(r, uncertainty);
      if (r.below(3) > 0 && !variable.equals(leftOut)) {
        sheet.says(variable, amount);
      }
    }
    String shape = SHAPES.get(r.below(2));
    boolean present = r.below(2) == 0;
    if (r.below(3) > 0) {
      sheet.says("base_profile_shape", Amount.category(shape)).says("tapped_slag", Amount.of(present ? ValueKind.PRESENT : ValueKind.ABSENT));
    }
    if (r.below(3) > 0) {
      CLASSES.forEach(c -> sheet.residue(c, Amount.plusMinus(1 + 5 * r.uniform(), uncertainty)));
    }
    if (r.below(3) > 0) {
      List<Object> analysis = new ArrayList<>();
      OXIDES.forEach(o -> {
        analysis.add(o);
        analysis.add(o.equals("MgO") && r.below(4) == 0 ? Amount.belowLimit(0.005) : (Object) (1 + 20 * r.uniform()));
      });
      sheet.slag(IronBasis.FEO, analysis.toArray());
    }
    return sheet.build();
  }

  private static Amount number(RandomStream r, double uncertainty) {
    double value = 0.1 + 0.1 * r.uniform();
    return switch (r.below(6)) {
      case 0 -> Amount.atLeast(value);
      case 1 -> uncertainty > 0 ? Amount.range(value, value + 0.05) : Amount.exact(value);
      case 2 -> Amount.of(ValueKind.NOT_PRESERVED);
      default -> uncertainty > 0 ? Amount.plusMinus(value, uncertainty * r.uniform()) : Amount.exact(value);
    };
  }

  private List<SheetData> sheets(String name, int count, double uncertainty, String leftOut) {
    List<SheetData> sheets = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      sheets.add(sheet(name + i, uncertainty, leftOut, new RandomStream(RandomStream.key(78, name + i))));
    }
    return sheets;
  }

  private static List<Comparison> compare(List<SheetData> trials, List<SheetData> sheets, ComparisonSettings settings) {
    return new ComparisonEngine(Criteria.all(), settings).compare(trials, sheets, Progress.NONE);
  }

  @Test
  void everythingIsBoundedAndOrdered() {
    int tested = 0;
    for (Comparison c : compare(sheets("t", TRIALS, 0.02, ""), sheets("e", SHEETS, 0.02, ""), SETTINGS)) {
      assertTrue(c.coverage() >= 0 && c.coverage() <= 1);
      for (CriterionResult r : c.criteria()) {
        assertTrue(!r.isTested() || r.agreement() >= 0 && r.agreement() <= 1 && r.compatibility() >= 0 && r.compatibility() <= 1, r.criterion());
        assertTrue(!r.isTested() || r.low() <= r.high(), r.criterion());
      }
      if (c.isTested()) {
        assertTrue(c.low() >= 0 && c.low() <= c.agreement() && c.agreement() <= c.high() && c.high() <= 100);
        assertTrue(c.boundLow() <= c.boundHigh() && c.bandLow() <= c.bandHigh() && c.bandHigh() <= 100);
        tested++;
      }
    }
    assertTrue(tested > 5000, tested + " pairs tested");
  }

  /** Threads and the order of trials, sheets and criteria change no figure, to the last bit. */
  @Test
  void threadsAndOrderChangeNothing() {
    List<SheetData> trials = sheets("t", TRIALS, 0.02, "");
    List<SheetData> sheets = sheets("e", SHEETS, 0.02, "");
    List<Comparison> once = compare(trials, sheets, SETTINGS);
    List<Comparison> again = compare(trials.reversed(), sheets.reversed(), SETTINGS.with(100, 5, 3)).reversed();
    for (int i = 0; i < once.size(); i++) {
      assertEquals(once.get(i), again.get(i));
    }
  }

  /** Leaving out what is said of one variable turns no verdict of another criterion, and its agreement neither. */
  @Test
  void aClaimLeftOutTurnsNoOtherVerdict() {
    List<SheetData> trials = sheets("t", TRIALS, 0.02, "");
    List<Comparison> with = compare(trials, sheets("e", SHEETS, 0.02, ""), SETTINGS);
    List<Comparison> without = compare(trials, sheets("e", SHEETS, 0.02, "wall_thickness"), SETTINGS);
    for (int i = 0; i < with.size(); i++) {
      for (int c = 0; c < with.get(i).criteria().size(); c++) {
        CriterionResult before = with.get(i).criteria().get(c);
        if (!before.criterion().equals("wall_thickness")) {
          assertEquals(before, without.get(i).criteria().get(c));
        }
      }
      assertTrue(without.get(i).coverage() <= with.get(i).coverage() + 1e-12 || !with.get(i).criteria().get(index("wall_thickness")).isTested());
    }
  }

  private static int index(String criterion) {
    List<String> ids = Criteria.all().stream().map(Criterion::id).toList();
    return ids.indexOf(criterion);
  }

  /** Trials of which nothing is uncertain: the interval is the pool of the agreements printed beside it. */
  @Test
  void withoutUncertaintyTheIntervalIsThePool() {
    double[] weights = SETTINGS.weights().shares(Criteria.all());
    for (Comparison c : compare(certain(), sheets("e", SHEETS, 0.02, ""), SETTINGS)) {
      double pool = Pool.score(c.criteria().stream().mapToDouble(r -> Math.log(r.agreement())).toArray(), weights);
      assertEquals(pool, c.agreement(), 1e-9);
      assertEquals(pool, c.low(), 1e-9);
      assertEquals(pool, c.high(), 1e-9);
    }
  }

  private List<SheetData> certain() {
    List<SheetData> trials = new ArrayList<>();
    for (int i = 0; i < TRIALS; i++) {
      SheetBuilder trial = SheetBuilder.sheet("t" + i);
      NUMBERS.forEach(n -> trial.says(n, Amount.exact(0.1 + 0.1 * random.uniform())));
      trials.add(trial.says("base_profile_shape", Amount.category("round:1")).build());
    }
    return trials;
  }

  /** Weights times a number are the same weights; a criterion of weight zero changes neither agreement nor coverage. */
  @Test
  void onlyTheProportionsOfWeightsCount() {
    List<SheetData> trials = sheets("t", TRIALS, 0.02, "");
    List<SheetData> sheets = sheets("e", SHEETS, 0.02, "");
    Weights none = new Weights(Map.of(), Map.of("inlet_angle", 0.0));
    List<Comparison> zero = compare(trials, sheets, SETTINGS.with(none));
    List<Criterion> fewer = Criteria.all().stream().filter(c -> !c.id().equals("inlet_angle")).toList();
    List<Comparison> without = new ComparisonEngine(fewer, SETTINGS).compare(trials, sheets, Progress.NONE);
    for (int i = 0; i < zero.size(); i++) {
      assertEquals(without.get(i).agreement(), zero.get(i).agreement(), 1e-9);
      assertEquals(without.get(i).coverage(), zero.get(i).coverage(), 1e-9);
    }
  }
}
