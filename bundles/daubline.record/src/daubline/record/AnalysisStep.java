package daubline.record;

import daubline.base.Amount;
import daubline.base.IronBasis;
import daubline.base.Oxides;
import daubline.base.ValueKind;
import daubline.model.Analysis;
import daubline.model.Component;
import daubline.session.Readings;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How an analysis is looked at. The study keeps it as the laboratory printed it; every step is worked out from that when
 * it is shown, has a name, and is gone when it is no longer chosen.
 */
public enum AnalysisStep {
  /** As the laboratory printed it. */
  MEASURED {
    @Override
    public Map<String, Amount> apply(Map<String, Amount> parts) {
      return parts;
    }
  },
  /** All iron as FeO: FeO + 0.8998 Fe2O3 + 1.2865 Fe. */
  IRON_AS_FEO {
    @Override
    public Map<String, Amount> apply(Map<String, Amount> parts) {
      return iron(parts, "FeO", Map.of("FeO", 1.0, "Fe2O3", Oxides.FEO_OF_FE2O3, "Fe", Oxides.FEO_OF_FE));
    }
  },
  /** All iron as Fe2O3: Fe2O3 + 1.1113 FeO + 1.4297 Fe. */
  IRON_AS_FE2O3 {
    @Override
    public Map<String, Amount> apply(Map<String, Amount> parts) {
      return iron(parts, "Fe2O3", Map.of("Fe2O3", 1.0, "FeO", 1 / Oxides.FEO_OF_FE2O3, "Fe", Oxides.FEO_OF_FE / Oxides.FEO_OF_FE2O3));
    }
  },
  /** Each component over the sum of components. */
  NORMALISED {
    @Override
    public Map<String, Amount> apply(Map<String, Amount> parts) {
      double sum = total(parts);
      Map<String, Amount> all = new LinkedHashMap<>();
      parts.forEach((symbol, amount) -> all.put(symbol, amount.isNumber() && sum > 0 ? scaled(amount, 1 / sum) : amount));
      return all;
    }
  };

  /** The parts after this step, in mass fractions by symbol; what is no number stays what it is. */
  public abstract Map<String, Amount> apply(Map<String, Amount> parts);

  /** The parts of an analysis as printed, in mass fractions by symbol. */
  public static Map<String, Amount> parts(Analysis analysis) {
    Map<String, Amount> parts = new LinkedHashMap<>();
    for (Component component : analysis.getComponents()) {
      parts.put(String.valueOf(component.getSymbol()), Readings.amount(component));
    }
    return parts;
  }

  /** The sum of what was measured; values below a limit of detection and missing ones count nothing. */
  public static double total(Map<String, Amount> parts) {
    return parts.values().stream().filter(a -> a.isNumber() && a.kind() != ValueKind.BELOW_LIMIT).mapToDouble(Amount::value).sum();
  }

  private static Map<String, Amount> iron(Map<String, Amount> parts, String target, Map<String, Double> factors) {
    Map<String, Amount> all = new LinkedHashMap<>(parts);
    List<Amount> iron = new ArrayList<>();
    factors.forEach((symbol, factor) -> {
      Amount amount = parts.get(symbol);
      if (amount != null && amount.isNumber()) {
        iron.add(scaled(amount, factor));
        all.remove(symbol);
      }
    });
    if (!iron.isEmpty()) {
      all.put(target, iron.size() == 1 ? iron.get(0) : added(iron));
    }
    return all;
  }

  private static Amount added(List<Amount> all) {
    double sum = all.stream().filter(a -> a.kind() != ValueKind.BELOW_LIMIT).mapToDouble(Amount::value).sum();
    double squares = all.stream().mapToDouble(a -> a.sigmaOr(0) * a.sigmaOr(0)).sum();
    return squares > 0 ? Amount.plusMinus(sum, Math.sqrt(squares)) : Amount.exact(sum);
  }

  private static Amount scaled(Amount a, double factor) {
    return new Amount(a.kind(), a.value() * factor, a.low() * factor, a.high() * factor, a.sigma() * factor, a.category());
  }

  /** The basis that an analysis has after this step. */
  public IronBasis basis(IronBasis before) {
    return this == IRON_AS_FEO ? IronBasis.FEO : this == IRON_AS_FE2O3 ? IronBasis.FE2O3 : before;
  }
}
