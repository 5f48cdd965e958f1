package daubline.export.tables;

import daubline.base.Amount;
import daubline.base.IronBasis;
import daubline.base.Printed;
import daubline.base.ValueKind;
import daubline.engine.process.balance.Oxide;
import daubline.export.TableOptions;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Iron of an analysis given as one oxide, by the masses of the formulas (IUPAC standard atomic weights, from memory). */
final class IronForm {

  /** The formulas under which iron is printed. */
  static final List<String> FORMULAS = List.of("FeO", "Fe2O3", "Fe");

  private IronForm() {
  }

  /**
   * The components with all iron as one oxide. Oxides of iron are added up; metallic iron counts where no oxide is given, since
   * an oxide is usually printed beside it for the same iron, unless the basis says that it is metal. Unchanged when there is
   * nothing to convert.
   */
  static Map<String, Amount> convert(Map<String, Amount> components, IronBasis basis, TableOptions.Iron iron) {
    List<String> given = given(components, basis == IronBasis.WITH_METAL);
    String wanted = iron == TableOptions.Iron.FEO ? "FeO" : "Fe2O3";
    if (iron == TableOptions.Iron.AS_PRINTED || given.isEmpty() || given.equals(List.of(wanted)) && FORMULAS.stream().filter(components::containsKey).count() == 1) {
      return components;
    }
    Map<String, Amount> converted = new LinkedHashMap<>();
    components.forEach((symbol, amount) -> {
      if (!FORMULAS.contains(symbol)) {
        converted.put(symbol, amount);
      } else if (!converted.containsKey(wanted)) {
        converted.put(wanted, sum(components, given, wanted));
      }
    });
    return converted;
  }

  /** The formulas that count: oxides that are numbers, otherwise the element, otherwise one that is only a limit or a reason. */
  private static List<String> given(Map<String, Amount> components, boolean withMetal) {
    List<String> numbers = FORMULAS.stream().filter(f -> components.containsKey(f) && isCounted(components.get(f))).toList();
    List<String> oxides = numbers.stream().filter(f -> withMetal || !f.equals("Fe")).toList();
    return !oxides.isEmpty() ? oxides : !numbers.isEmpty() ? numbers : FORMULAS.stream().filter(components::containsKey).limit(1).toList();
  }

  private static boolean isCounted(Amount amount) {
    return amount.isNumber() && amount.kind() != ValueKind.BELOW_LIMIT;
  }

  private static Amount sum(Map<String, Amount> components, List<String> given, String wanted) {
    if (given.size() == 1) {
      return scaled(components.get(given.get(0)), factor(given.get(0), wanted));
    }
    double sum = given.stream().mapToDouble(f -> components.get(f).value() * factor(f, wanted)).sum();
    double sigma = Math.sqrt(given.stream().mapToDouble(f -> Math.pow(Values.sigma(components.get(f)) * factor(f, wanted), 2)).sum());
    return sigma > 0 ? Amount.plusMinus(sum, sigma) : Amount.exact(sum);
  }

  /** The mass of one formula that holds as much iron as a unit of another. */
  static double factor(String from, String to) {
    return share(from) / share(to);
  }

  private static double share(String formula) {
    return switch (formula) {
      case "FeO" -> Oxide.FEO.ironShare();
      case "Fe2O3" -> Oxide.FE2O3.ironShare();
      default -> 1;
    };
  }

  /** An amount times a factor; reasons for a missing value stay as they are. */
  static Amount scaled(Amount a, double factor) {
    return factor == 1 || !a.isNumber() ? a : new Amount(a.kind(), a.value() * factor, a.low() * factor, a.high() * factor, a.sigma() * factor, a.category());
  }

  static String formula(TableOptions.Iron iron) {
    return iron == TableOptions.Iron.FEO ? "FeO = Fe₂O₃ × " + Printed.fixed(factor("Fe2O3", "FeO"), 4) + ", or Fe × " + Printed.fixed(factor("Fe", "FeO"), 4)
        : "Fe₂O₃ = FeO × " + Printed.fixed(factor("FeO", "Fe2O3"), 4) + ", or Fe × " + Printed.fixed(factor("Fe", "Fe2O3"), 4);
  }
}
