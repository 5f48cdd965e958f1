package daubline.validation;

import daubline.base.Amount;
import daubline.base.IronBasis;
import daubline.base.Material;
import daubline.base.Trail;
import daubline.base.ValueKind;
import daubline.engine.inference.AnalysisData;
import daubline.engine.inference.ClassMass;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Statement;
import daubline.engine.stats.RandomStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * One furnace and smelt of known truth, and records of it: remains of a trial that repeats it, scattered by one tolerance of
 * each criterion and by reading, or what an excavation recovers of it, with fields missing, heights broken off, totals
 * incomplete and oxides below their limit. All figures are invented but of the size of published ones.
 *
 * @param numbers truth of each number, canonical
 * @param tapped whether slag was tapped
 * @param shares truth of the residue classes by mass
 * @param slag truth of the slag by oxide, mass fraction
 */
record SimulatedSmelt(Map<String, Double> numbers, boolean tapped, double[] shares, Map<String, Double> slag) {

  private static final List<Number> NUMBERS = List.of(new Number("base_internal_diameter", 0.30, 0.025, 0.020, 0.008), new Number("wall_thickness", 0.15, 0.025, 0.025, 0.010),
      new Number("inlet_bore", 0.030, 0.004, 0.004, 0.001), new Number("inlet_angle", 15, 5, 5, 2), new Number("oxidised_depth", 0.06, 0.02, 0.020, 0.006),
      new Number("slag_adhering_height", 0.20, 0.04, 0.040, 0.015));
  private static final Map<String, Double> USUAL_SLAG = ordered("SiO2", 0.25, "Al2O3", 0.06, "FeO", 0.60, "CaO", 0.025, "MgO", 0.010, "K2O", 0.008, "MnO", 0.006);
  private static final double LIMIT = 0.005;
  private static final int FRAGMENTS = 40;

  private record Number(String variable, double usual, double between, double tolerance, double reading) {
  }

  private static Map<String, Double> ordered(Object... pairs) {
    Map<String, Double> map = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      map.put((String) pairs[i], (Double) pairs[i + 1]);
    }
    return map;
  }

  /** A truth drawn from a population of recipes. */
  static SimulatedSmelt draw(RandomStream r) {
    Map<String, Double> numbers = new LinkedHashMap<>();
    NUMBERS.forEach(n -> numbers.put(n.variable, n.usual + n.between * r.normal()));
    Map<String, Double> slag = new LinkedHashMap<>();
    USUAL_SLAG.forEach((oxide, usual) -> slag.put(oxide, usual * Math.exp(0.25 * r.normal())));
    return new SimulatedSmelt(numbers, r.below(5) > 0, r.dirichlet(new double[] {16, 16, 12, 4}), slag);
  }

  /** The remains of a trial that repeats this smelt. */
  SheetData repeated(String id, RandomStream r) {
    return record(id, r, true);
  }

  /** What an excavation recovers of it. */
  SheetData excavated(String id, RandomStream r) {
    return record(id, r, false);
  }

  private SheetData record(String id, RandomStream r, boolean trial) {
    Map<String, List<Statement>> statements = new LinkedHashMap<>();
    for (Number n : NUMBERS) {
      double value = numbers.get(n.variable) + (trial ? n.tolerance * r.normal() : 0) + n.reading * r.normal();
      put(statements, n.variable, !trial && r.below(3) == 0 ? Amount.of(r.below(2) == 0 ? ValueKind.NOT_PRESERVED : ValueKind.NOT_RECORDED)
          : Amount.plusMinus(value, n.reading));
    }
    double stands = trial ? 0.50 + 0.06 * r.normal() : 0.10 + 0.15 * r.uniform();
    put(statements, "surviving_height", trial ? Amount.exact(stands) : Amount.atLeast(stands));
    put(statements, "tapped_slag", Amount.of(!trial && r.below(6) == 0 ? ValueKind.NOT_LOOKED_FOR : tapped ? ValueKind.PRESENT : ValueKind.ABSENT));
    return new SheetData(id, id, Double.NaN, statements, residues(id, r), List.of(analysis(id, r, trial)));
  }

  private static void put(Map<String, List<Statement>> statements, String variable, Amount amount) {
    statements.put(variable, List.of(new Statement(variable, amount, 1, Double.NaN, false, Trail.of("simulated", ""))));
  }

  /** Twenty independent fragments of both sides together are forty of each. */
  private List<ClassMass> residues(String id, RandomStream r) {
    int[] pieces = new int[shares.length];
    for (int i = 0; i < FRAGMENTS; i++) {
      pieces[RandomStream.pick(shares, r.uniform())]++;
    }
    List<String> names = List.of("tap slag", "furnace slag", "lining", "prills");
    return IntStream.range(0, pieces.length).mapToObj(k -> new ClassMass(names.get(k), names.get(k), Amount.exact(0.25 * pieces[k]), -1, 1,
        Trail.of("simulated", id))).toList();
  }

  private AnalysisData analysis(String id, RandomStream r, boolean trial) {
    Map<String, Amount> parts = new LinkedHashMap<>();
    slag.forEach((oxide, share) -> {
      double scattered = share * Math.exp(trial ? 0.15 * r.normal() : 0);
      double reading = Math.hypot(0.03 * scattered, 0.0005);
      double value = scattered + reading * r.normal();
      parts.put(oxide, value < LIMIT ? Amount.belowLimit(LIMIT) : Amount.plusMinus(value, reading));
    });
    return new AnalysisData(id, Material.SLAG, "bulk", IronBasis.FEO, parts, Double.NaN, Trail.of("simulated", ""));
  }
}
