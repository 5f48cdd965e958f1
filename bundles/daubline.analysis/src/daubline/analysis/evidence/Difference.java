package daubline.analysis.evidence;

import daubline.analysis.record.ReconstructionData;
import daubline.analysis.record.ReconstructionData.Chosen;
import daubline.base.Printed;
import daubline.base.Variable;
import daubline.base.Variables;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A property about which two reconstructions differ.
 *
 * @param variable its id
 * @param property its name
 * @param first what the first chose; empty when nothing
 * @param second what the second chose
 */
public record Difference(String variable, String property, List<Chosen> first, List<Chosen> second) {

  public Difference {
    first = List.copyOf(first);
    second = List.copyOf(second);
  }

  /** The value on one side as it is printed. */
  public String value(boolean ofFirst, Variables variables) {
    return (ofFirst ? first : second).stream().map(c -> printed(c, variables)).collect(Collectors.joining("; "));
  }

  /** What it rests on, on one side. */
  public String basis(boolean ofFirst) {
    return (ofFirst ? first : second).stream().map(c -> (c.basis() == null ? "basis not said" : c.basis().word())
        + (c.because().isEmpty() ? "" : ": " + c.because())).collect(Collectors.joining("; "));
  }

  /** A choice as typed, or in the unit of its variable. */
  public static String printed(Chosen chosen, Variables variables) {
    return chosen.typed().isEmpty() ? variables.find(chosen.variable()).map(v -> Printed.withUnit(chosen.amount(), v.unit())).orElse(chosen.amount().category())
        : chosen.typed();
  }

  /** Everything about which two differ in value, basis or reason, in the order of the catalogue; what is the same is left out. */
  public static List<Difference> between(ReconstructionData a, ReconstructionData b, Variables variables) {
    List<Difference> differences = new ArrayList<>();
    for (String variable : variables(a, b, variables)) {
      Difference d = new Difference(variable, variables.find(variable).map(Variable::name).orElse(variable), a.about(variable), b.about(variable));
      if (!essence(d.first()).equals(essence(d.second()))) {
        differences.add(d);
      }
    }
    return differences;
  }

  /** The number of properties that both chose alike, value, basis and reason. */
  public static int same(ReconstructionData a, ReconstructionData b, Variables variables) {
    return variables(a, b, variables).size() - between(a, b, variables).size();
  }

  private static Set<String> variables(ReconstructionData a, ReconstructionData b, Variables variables) {
    Set<String> chosen = Stream.concat(a.choices().stream(), b.choices().stream()).map(Chosen::variable).collect(Collectors.toCollection(LinkedHashSet::new));
    Set<String> ordered = variables.all().stream().map(Variable::id).filter(chosen::contains).collect(Collectors.toCollection(LinkedHashSet::new));
    ordered.addAll(chosen);
    return ordered;
  }

  private record Essence(Object amount, Object basis, String because) {
  }

  private static List<Essence> essence(List<Chosen> chosen) {
    return chosen.stream().map(c -> new Essence(c.amount(), c.basis(), c.because())).toList();
  }
}
