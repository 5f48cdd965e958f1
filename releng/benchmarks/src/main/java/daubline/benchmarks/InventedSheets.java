package daubline.benchmarks;

import daubline.base.Amount;
import daubline.base.IronBasis;
import daubline.base.Material;
import daubline.base.Trail;
import daubline.base.ValueKind;
import daubline.criteria.Criteria;
import daubline.engine.inference.AnalysisData;
import daubline.engine.inference.ClassMass;
import daubline.engine.inference.Criterion;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Statement;
import daubline.engine.stats.RandomStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Invented trials and sheets of a stated size: numbers with an uncertainty, two of them against a lower limit, three or five
 * features present or absent, four residue classes and eight oxides.
 *
 * @param trials remains of trials
 * @param sheets evidence sheets
 * @param criteria as many as were asked for, all of them tested in every pair
 */
record InventedSheets(List<SheetData> trials, List<SheetData> sheets, List<Criterion> criteria) {

  private static final List<String> NUMBERS = List.of("surviving_height", "bloom_diameter", "base_internal_diameter", "base_external_diameter",
      "wall_thickness", "pit_diameter", "pit_depth", "tap_opening_width", "inlet_bore", "inlet_height_above_floor", "inlet_angle", "inlet_count",
      "oxidised_depth", "lining_thickness_lost", "slag_adhering_height", "slag_density", "charcoal_size");
  private static final List<String> FEATURES = List.of("tapped_slag", "prills", "tap_opening", "charcoal_impressions", "organic_impressions");
  private static final String LIMITED = "bloom_diameter";

  /** Sheets for 24 criteria (17 numbers, 5 features) or 15 (10 and 3), with shares and slag. */
  static InventedSheets of(int trials, int sheets, int criteria) {
    List<String> numbers = NUMBERS.subList(0, criteria == 24 ? 17 : 10);
    List<String> features = FEATURES.subList(0, criteria - 2 - numbers.size());
    RandomStream random = new RandomStream(1);
    List<SheetData> found = new ArrayList<>();
    for (int i = 0; i < trials; i++) {
      found.add(sheet("trial" + i, random, numbers, features, false));
    }
    List<SheetData> evidence = new ArrayList<>();
    for (int i = 0; i < sheets; i++) {
      evidence.add(sheet("sheet" + i, random, numbers, features, true));
    }
    List<Criterion> chosen = Criteria.all().stream().filter(c -> c.inputs().size() == 1
        && (numbers.contains(c.inputs().get(0)) || features.contains(c.inputs().get(0)))
        || c.id().equals("residue_shares") || c.id().equals("slag_composition")).toList();
    if (chosen.size() != criteria) {
      throw new IllegalStateException("asked for " + criteria + " criteria, found " + chosen.size());
    }
    return new InventedSheets(found, evidence, chosen);
  }

  private static SheetData sheet(String id, RandomStream random, List<String> numbers, List<String> features, boolean evidence) {
    Trail trail = Trail.of(id, "");
    Map<String, List<Statement>> statements = new LinkedHashMap<>();
    for (String n : numbers) {
      double value = Math.abs(0.3 + 0.05 * random.normal());
      Amount amount = evidence && n.equals(LIMITED) ? Amount.atLeast(value) : Amount.plusMinus(value, 0.01);
      statements.put(n, List.of(new Statement(id, amount, Double.NaN, Double.NaN, false, trail)));
    }
    features.forEach(f -> statements.put(f, List.of(new Statement(id, Amount.of(random.uniform() < 0.5 ? ValueKind.PRESENT : ValueKind.ABSENT),
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
}
