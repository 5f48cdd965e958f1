package daubline.engine.process.balance;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Masses of oxides, kg.
 *
 * @param masses mass of each oxide, none negative
 */
public record OxideMasses(Map<Oxide, Double> masses) {

  /** Copies the masses. */
  public OxideMasses {
    EnumMap<Oxide, Double> copy = new EnumMap<>(Oxide.class);
    copy.putAll(masses);
    masses = Collections.unmodifiableMap(copy);
  }

  /** Everything that some portions bring together. */
  public static OxideMasses of(List<Portion> portions) {
    EnumMap<Oxide, Double> sum = new EnumMap<>(Oxide.class);
    for (Portion portion : portions) {
      portion.analysis().shares().forEach((oxide, share) -> sum.merge(oxide, share * portion.mass(), Double::sum));
    }
    return new OxideMasses(sum);
  }

  /** Mass of one oxide, kg. */
  public double mass(Oxide oxide) {
    return masses.getOrDefault(oxide, 0.0);
  }

  /** Moles of one oxide. */
  public double moles(Oxide oxide) {
    return mass(oxide) / oxide.molarMass();
  }

  /** Mass of elemental iron, kg. */
  public double iron() {
    return mass(Oxide.FEO) * Oxide.FEO.ironShare() + mass(Oxide.FE2O3) * Oxide.FE2O3.ironShare();
  }

  /** Sum of all oxides, kg. */
  public double total() {
    return masses.values().stream().mapToDouble(Double::doubleValue).sum();
  }

  /** Shares of the sum; empty when there is no mass. */
  public Analysis analysis() {
    double total = total();
    if (!(total > 0)) {
      return Analysis.EMPTY;
    }
    EnumMap<Oxide, Double> shares = new EnumMap<>(Oxide.class);
    masses.forEach((oxide, mass) -> shares.put(oxide, Math.min(1, mass / total)));
    return new Analysis(shares);
  }
}
