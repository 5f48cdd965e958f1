package daubline.criteria;

import daubline.base.Amount;
import daubline.base.IronBasis;
import daubline.base.Material;
import daubline.base.Trail;
import daubline.engine.inference.AnalysisData;
import daubline.engine.inference.ClassMass;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Builds sheets for tests. */
final class SheetBuilder {

  private final String id;
  private final Map<String, List<Statement>> statements = new LinkedHashMap<>();
  private final List<ClassMass> residues = new ArrayList<>();
  private final List<AnalysisData> analyses = new ArrayList<>();
  private double samplingFraction = Double.NaN;

  private SheetBuilder(String id) {
    this.id = id;
  }

  static SheetBuilder sheet(String id) {
    return new SheetBuilder(id);
  }

  SheetBuilder sampled(double fraction) {
    samplingFraction = fraction;
    return this;
  }

  SheetBuilder says(String variable, Amount amount) {
    return says(variable, amount, false);
  }

  SheetBuilder says(String variable, Amount amount, boolean picked) {
    List<Statement> list = statements.computeIfAbsent(variable, v -> new ArrayList<>());
    String claim = id + "." + variable + "." + list.size();
    list.add(new Statement(claim, amount, Double.NaN, Double.NaN, picked, Trail.entry("claim", amount.toString(), claim)));
    return this;
  }

  /** A statement that was read with low confidence. */
  SheetBuilder doubts(String variable, Amount amount) {
    statements.computeIfAbsent(variable, v -> new ArrayList<>())
        .add(new Statement(id + "." + variable, amount, Double.NaN, Double.NaN, false, true, Trail.entry("claim", amount.toString(), id)));
    return this;
  }

  SheetBuilder residue(String residueClass, Amount mass) {
    return residue(residueClass, mass, -1);
  }

  SheetBuilder residue(String residueClass, Amount mass, int pieces) {
    residues.add(new ClassMass(residueClass, residueClass, mass, pieces, Double.NaN, Trail.entry("residue", "", residueClass)));
    return this;
  }

  SheetBuilder slag(IronBasis basis, Object... symbolsAndPercents) {
    return analysis(Material.SLAG, basis, symbolsAndPercents);
  }

  /** Components in weight per cent; a number, or an amount in mass fraction. */
  SheetBuilder analysis(Material material, IronBasis basis, Object... symbolsAndPercents) {
    Map<String, Amount> components = new LinkedHashMap<>();
    for (int i = 0; i < symbolsAndPercents.length; i += 2) {
      Object value = symbolsAndPercents[i + 1];
      components.put((String) symbolsAndPercents[i],
          value instanceof Amount amount ? amount : Amount.exact(((Number) value).doubleValue() / 100));
    }
    String name = id + ".analysis." + analyses.size();
    analyses.add(new AnalysisData(name, material, "bulk", basis, components, Double.NaN, Trail.entry("analysis", "", name)));
    return this;
  }

  SheetData build() {
    return new SheetData(id, id, samplingFraction, statements, residues, analyses);
  }
}
