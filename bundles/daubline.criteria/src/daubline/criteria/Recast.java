package daubline.criteria;

import daubline.base.Amount;
import daubline.base.IronBasis;
import daubline.base.Oxides;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.base.ValueKind;
import daubline.engine.inference.AnalysisData;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * An analysis with all iron as FeO, so that analyses on different iron bases can be compared: FeO + 0.8998·Fe2O3, or
 * 1.2865·Fe (atomic masses of IUPAC 2021: Fe 55.845, O 15.999). Values below a limit of detection stand at 0.65 of the
 * limit and are marked.
 *
 * @param parts mass fraction by oxide
 * @param sigmas standard uncertainty by oxide, NaN when not stated
 * @param below whether an oxide is below its limit of detection
 * @param trail the analysis and what was done to its iron
 */
record Recast(Map<String, Double> parts, Map<String, Double> sigmas, Map<String, Boolean> below, Trail trail) {

  static final String IRON = "FeO";
  static final double FROM_FE2O3 = Oxides.FEO_OF_FE2O3;
  static final double FROM_FE = Oxides.FEO_OF_FE;
  private static final double BELOW_LIMIT_SHARE = 0.65;

  static Recast of(AnalysisData analysis) {
    Recast recast = new Recast(new LinkedHashMap<>(), new LinkedHashMap<>(), new LinkedHashMap<>(), trail(analysis));
    analysis.components().forEach((symbol, amount) -> {
      if (!symbol.equals("Fe") && !symbol.equals("Fe2O3") && !symbol.equals(IRON)) {
        recast.put(symbol, amount, 1);
      }
    });
    recast.iron(analysis);
    return recast;
  }

  private void iron(AnalysisData analysis) {
    Amount ferrous = analysis.components().get(IRON);
    Amount ferric = analysis.components().get("Fe2O3");
    Amount metal = analysis.components().get("Fe");
    if (usable(ferrous) && usable(ferric) && analysis.ironBasis() != IronBasis.FEO && analysis.ironBasis() != IronBasis.FE2O3) {
      parts.put(IRON, value(ferrous) + FROM_FE2O3 * value(ferric));
      sigmas.put(IRON, Math.hypot(ferrous.sigma(), FROM_FE2O3 * ferric.sigma()));
      below.put(IRON, false);
    } else if (usable(ferrous) && analysis.ironBasis() != IronBasis.FE2O3) {
      put(IRON, ferrous, 1);
    } else if (usable(ferric)) {
      put(IRON, ferric, FROM_FE2O3);
    } else if (usable(ferrous)) {
      put(IRON, ferrous, 1);
    } else if (usable(metal)) {
      put(IRON, metal, FROM_FE);
    }
  }

  private void put(String symbol, Amount amount, double factor) {
    if (usable(amount)) {
      parts.put(symbol, factor * value(amount));
      sigmas.put(symbol, amount.kind() == ValueKind.RANGE ? factor * (amount.high() - amount.low()) / Math.sqrt(12) : factor * amount.sigma());
      below.put(symbol, amount.kind() == ValueKind.BELOW_LIMIT);
    }
  }

  /** A positive number; zero, trace, not detected and not analysed say nothing about a ratio. */
  private static boolean usable(Amount amount) {
    return amount != null && amount.isNumber() && value(amount) > 0 && amount.kind() != ValueKind.AT_LEAST && amount.kind() != ValueKind.AT_MOST;
  }

  private static double value(Amount amount) {
    return amount.kind() == ValueKind.BELOW_LIMIT ? BELOW_LIMIT_SHARE * amount.high() : amount.value();
  }

  private static Trail trail(AnalysisData analysis) {
    return Trail.of("All iron as FeO, from " + analysis.ironBasis().word() + ": FeO + " + Printed.number(FROM_FE2O3) + "·Fe2O3, or "
        + Printed.number(FROM_FE, 5) + "·Fe", "", analysis.trail());
  }
}
