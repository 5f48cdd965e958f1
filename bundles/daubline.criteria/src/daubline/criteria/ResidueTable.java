package daubline.criteria;

import daubline.base.Trail;
import daubline.base.ValueKind;
import daubline.engine.inference.ClassMass;
import daubline.engine.inference.SheetData;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The masses of one sheet by residue class. A class that was searched for and is absent has mass zero; one that was not
 * weighed has none.
 *
 * @param masses mass by class, kilograms; scaled up by the share recovered when every class states it
 * @param variances variance of each mass
 * @param names name by class
 * @param unknown classes that were there and have no mass, or one below zero
 * @param trails where they came from
 */
record ResidueTable(Map<String, Double> masses, Map<String, Double> variances, Map<String, String> names, Set<String> unknown,
    List<Trail> trails) {

  static ResidueTable of(SheetData sheet) {
    ResidueTable table = new ResidueTable(new TreeMap<>(), new TreeMap<>(), new TreeMap<>(), new TreeSet<>(),
        sheet.residues().stream().map(ClassMass::trail).toList());
    boolean scaled = sheet.residues().stream().allMatch(r -> r.samplingFraction() > 0);
    sheet.residues().forEach(r -> table.add(r, scaled ? 1 / r.samplingFraction() : 1));
    return table;
  }

  private void add(ClassMass row, double factor) {
    names.put(row.residueClass(), row.name());
    if (row.mass().isNumber() && row.mass().value() >= 0) {
      double sigma = row.mass().kind() == ValueKind.RANGE ? (row.mass().high() - row.mass().low()) / Math.sqrt(12) : row.mass().sigmaOr(0);
      masses.merge(row.residueClass(), row.mass().value() * factor, Double::sum);
      variances.merge(row.residueClass(), Math.pow(sigma * factor, 2), Double::sum);
    } else if (row.mass().kind() == ValueKind.ABSENT) {
      masses.merge(row.residueClass(), 0.0, Double::sum);
      variances.merge(row.residueClass(), 0.0, Double::sum);
    } else {
      unknown.add(row.residueClass());
    }
  }

  double mass(String residueClass) {
    return masses.getOrDefault(residueClass, 0.0);
  }

  double relative(String residueClass) {
    double mass = mass(residueClass);
    return mass > 0 ? Math.sqrt(variances.get(residueClass)) / mass : 0;
  }
}
