package daubline.engine.process.slag;

import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.Oxide;
import java.util.EnumMap;

/** Mole fractions of a slag with all iron as FeO, and sums that the melt models share. */
final class Melt {

  private final EnumMap<Oxide, Double> x;

  Melt(Analysis slag) {
    x = slag.ironAsFeo().moleFractions();
  }

  /** Mole fraction of one oxide. */
  double x(Oxide oxide) {
    return x.getOrDefault(oxide, 0.0);
  }

  /** Sum of mole fractions. */
  double sum(Oxide... oxides) {
    double sum = 0;
    for (Oxide oxide : oxides) {
      sum += x(oxide);
    }
    return sum;
  }
}
