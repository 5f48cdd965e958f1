package daubline.benchmarks;

import daubline.base.Amount;
import daubline.base.IronBasis;
import daubline.base.Material;
import daubline.base.Trail;
import daubline.base.ValueKind;
import daubline.criteria.Criteria;
import daubline.engine.inference.AnalysisData;
import daubline.engine.inference.ClassMass;
import daubline.engine.inference.ComparisonEngine;
import daubline.engine.inference.ComparisonSettings;
import daubline.engine.inference.Criterion;
import daubline.engine.inference.Progress;
import daubline.engine.inference.ScoreTable;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Statement;
import daubline.engine.stats.RandomStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Many trials against many sheets without words; its peer is peers/scoring.py, of the same sizes and arithmetic. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class ScoreBenchmark {

  private static final List<String> NUMBERS = List.of("surviving_height", "bloom_diameter", "base_internal_diameter", "base_external_diameter",
      "wall_thickness", "pit_diameter", "pit_depth", "tap_opening_width", "inlet_bore", "inlet_height_above_floor", "inlet_angle", "inlet_count",
      "oxidised_depth", "lining_thickness_lost", "slag_adhering_height", "slag_density", "charcoal_size");
  private static final List<String> WORDS = List.of("tapped_slag", "prills", "tap_opening");

  @Param({"1", "2"})
  private int threads;

  @Param({"100"})
  private int trials;

  @Param({"200"})
  private int sheets;

  @Param({"1000"})
  private int draws;

  private List<SheetData> found;
  private List<SheetData> evidence;
  private List<Criterion> criteria;

  /** Invents the sheets. */
  @Setup
  public void invent() {
    RandomStream random = new RandomStream(1);
    found = new ArrayList<>();
    evidence = new ArrayList<>();
    for (int i = 0; i < trials; i++) {
      found.add(sheet("trial" + i, random));
    }
    for (int i = 0; i < sheets; i++) {
      evidence.add(sheet("sheet" + i, random));
    }
    criteria = Criteria.all().stream().filter(c -> c.inputs().size() == 1
        && (NUMBERS.contains(c.inputs().get(0)) || WORDS.contains(c.inputs().get(0)))
        || c.id().equals("residue_shares") || c.id().equals("slag_composition")).toList();
  }

  private static SheetData sheet(String id, RandomStream random) {
    Trail trail = Trail.of(id, "");
    Map<String, List<Statement>> statements = new LinkedHashMap<>();
    NUMBERS.forEach(n -> statements.put(n, List.of(new Statement(id, Amount.plusMinus(Math.abs(0.3 + 0.05 * random.normal()), 0.01),
        Double.NaN, Double.NaN, false, trail))));
    WORDS.forEach(w -> statements.put(w, List.of(new Statement(id, Amount.of(random.uniform() < 0.5 ? ValueKind.PRESENT : ValueKind.ABSENT),
        Double.NaN, Double.NaN, false, trail))));
    List<ClassMass> residues = new ArrayList<>();
    for (String name : List.of("tap", "furnace", "lining", "prills")) {
      double mass = 1 + random.uniform();
      residues.add(new ClassMass(name, name, Amount.plusMinus(mass, 0.05 * mass), -1, Double.NaN, trail));
    }
    Map<String, Amount> slag = new LinkedHashMap<>();
    List.of("SiO2", "Al2O3", "FeO", "MnO", "MgO", "CaO", "K2O", "TiO2").forEach(o -> slag.put(o, Amount.exact(0.02 + 0.1 * random.uniform())));
    return new SheetData(id, id, 1, statements, residues,
        List.of(new AnalysisData(id, Material.SLAG, "bulk", IronBasis.FEO, slag, Double.NaN, trail)));
  }

  /** Every trial against every sheet. */
  @Benchmark
  public ScoreTable scoreAll() {
    return new ComparisonEngine(criteria, ComparisonSettings.standard().with(draws, 1, threads)).scores(found, evidence, Progress.NONE);
  }
}
