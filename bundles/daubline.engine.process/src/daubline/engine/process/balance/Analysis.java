package daubline.engine.process.balance;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * A chemical analysis as mass shares of oxides, 0 to 1; what was not analysed is absent, not zero. The sum is kept as
 * it was reported; {@link #normalised} scales on request.
 *
 * @param shares mass share of each oxide analysed
 */
public record Analysis(Map<Oxide, Double> shares) {

  /** An analysis that tells nothing. */
  public static final Analysis EMPTY = new Analysis(Map.of());

  /**
   * Copies the shares.
   *
   * @throws IllegalArgumentException when a share is negative, above one, or not a number
   */
  public Analysis {
    EnumMap<Oxide, Double> copy = new EnumMap<>(Oxide.class);
    shares.forEach((oxide, share) -> {
      if (!(share >= 0 && share <= 1)) {
        throw new IllegalArgumentException(oxide.formula() + " share must lie between 0 and 1, is " + share);
      }
      copy.put(oxide, share);
    });
    shares = Collections.unmodifiableMap(copy);
  }

  /** Pairs of oxide and mass share in percent, such as {@code ofPercent(Oxide.SIO2, 29.5, Oxide.FEO, 70.5)}. */
  public static Analysis ofPercent(Object... pairs) {
    EnumMap<Oxide, Double> map = new EnumMap<>(Oxide.class);
    for (int i = 0; i < pairs.length; i += 2) {
      map.put((Oxide) pairs[i], ((Number) pairs[i + 1]).doubleValue() / 100);
    }
    return new Analysis(map);
  }

  /** Mass share of an oxide; zero when it was not analysed. */
  public double share(Oxide oxide) {
    return shares.getOrDefault(oxide, 0.0);
  }

  /** Whether the oxide was analysed. */
  public boolean has(Oxide oxide) {
    return shares.containsKey(oxide);
  }

  /** Mass share of elemental iron. */
  public double iron() {
    return share(Oxide.FEO) * Oxide.FEO.ironShare() + share(Oxide.FE2O3) * Oxide.FE2O3.ironShare();
  }

  /** Sum of the shares as reported. */
  public double total() {
    return shares.values().stream().mapToDouble(Double::doubleValue).sum();
  }

  /** The same with all iron as FeO; the sum falls by the oxygen of the ferric iron. */
  public Analysis ironAsFeo() {
    EnumMap<Oxide, Double> map = copy();
    if (has(Oxide.FE2O3) || has(Oxide.FEO)) {
      map.remove(Oxide.FE2O3);
      map.put(Oxide.FEO, Math.min(1, iron() / Oxide.FEO.ironShare()));
    }
    return new Analysis(map);
  }

  /** Scaled to a sum of one. */
  public Analysis normalised() {
    double total = total();
    if (!(total > 0)) {
      return this;
    }
    EnumMap<Oxide, Double> map = copy();
    map.replaceAll((oxide, share) -> Math.min(1, share / total));
    return new Analysis(map);
  }

  /** Mole fraction of each oxide among those analysed. */
  public EnumMap<Oxide, Double> moleFractions() {
    EnumMap<Oxide, Double> moles = new EnumMap<>(Oxide.class);
    double sum = 0;
    for (Map.Entry<Oxide, Double> e : shares.entrySet()) {
      double n = e.getValue() / e.getKey().molarMass();
      moles.put(e.getKey(), n);
      sum += n;
    }
    double all = sum > 0 ? sum : 1;
    moles.replaceAll((oxide, n) -> n / all);
    return moles;
  }

  /** The same with one share set. */
  public Analysis with(Oxide oxide, double share) {
    EnumMap<Oxide, Double> map = copy();
    map.put(oxide, share);
    return new Analysis(map);
  }

  private EnumMap<Oxide, Double> copy() {
    EnumMap<Oxide, Double> map = new EnumMap<>(Oxide.class);
    map.putAll(shares);
    return map;
  }
}
