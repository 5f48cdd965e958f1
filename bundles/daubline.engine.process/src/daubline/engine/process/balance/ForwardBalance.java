package daubline.engine.process.balance;

import java.util.EnumMap;
import java.util.List;

/**
 * From what is charged to slag and metal, oxide by oxide.
 *
 * @param charged all oxides that went in, kg
 * @param slag oxides of the slag with its iron as FeO, kg
 * @param metal iron in the metal, kg
 * @param metalPhosphorus phosphorus in the metal, kg
 * @param metalManganese manganese in the metal, kg
 * @param volatilised alkali oxides lost with the gas, kg
 * @param mostMetal the most iron that could become metal beside the fayalite, kg
 */
public record ForwardBalance(OxideMasses charged, OxideMasses slag, double metal, double metalPhosphorus,
    double metalManganese, double volatilised, double mostMetal) {

  private static final double MANGANESE_SHARE = 0.054938 / 0.070937;
  private static final double PHOSPHORUS_SHARE = 2 * 0.030974 / 0.141943;

  /**
   * Where elements go that are neither wholly slag nor wholly metal; all 0 to 1.
   *
   * @param iron share of all iron charged that becomes metal
   * @param phosphorus share of the phosphorus in the metal; depends on redox, a free parameter
   * @param manganese share of the manganese in the metal; nearly zero in a bloomery (common practice, no source)
   * @param alkaliKept share of the alkalis that the slag keeps
   */
  public record Partition(double iron, double phosphorus, double manganese, double alkaliKept) {

    /** Iron as given, phosphorus and manganese to the slag, alkalis kept. */
    public static Partition ofIron(double iron) {
      return new Partition(iron, 0, 0, 1);
    }
  }

  /**
   * Balances a charge. Every oxide that is not reduced is found again in the slag:
   * m_slag w_slag = Σ m_source w_source. Iron: m_metal = recovery × Σ Fe. Source: conservation of mass, exact.
   *
   * @param portions ore, lining, ash, flux with their dry masses
   * @param partition where the divided elements go; the iron share is used as given, also beyond the fayalite bound,
   *     which {@link #exceedsBound} then tells
   */
  public static ForwardBalance of(List<Portion> portions, Partition partition) {
    OxideMasses charged = OxideMasses.of(portions);
    double metal = partition.iron() * charged.iron();
    EnumMap<Oxide, Double> slag = new EnumMap<>(Oxide.class);
    slag.putAll(charged.masses());
    slag.remove(Oxide.FE2O3);
    slag.put(Oxide.FEO, (charged.iron() - metal) / Oxide.FEO.ironShare());
    double manganese = partition.manganese() * charged.mass(Oxide.MNO);
    double phosphorus = partition.phosphorus() * charged.mass(Oxide.P2O5);
    slag.computeIfPresent(Oxide.MNO, (o, m) -> m - manganese);
    slag.computeIfPresent(Oxide.P2O5, (o, m) -> m - phosphorus);
    slag.computeIfPresent(Oxide.K2O, (o, m) -> m * partition.alkaliKept());
    slag.computeIfPresent(Oxide.NA2O, (o, m) -> m * partition.alkaliKept());
    double alkali = charged.mass(Oxide.K2O) + charged.mass(Oxide.NA2O);
    return new ForwardBalance(charged, new OxideMasses(slag), metal, phosphorus * PHOSPHORUS_SHARE,
        manganese * MANGANESE_SHARE, alkali * (1 - partition.alkaliKept()), LockedIron.mostMetal(charged));
  }

  /** Whether the recovery asked for is more than the silica leaves free. */
  public boolean exceedsBound() {
    return metal > mostMetal * (1 + 1e-12);
  }

  /**
   * Slag mass from one tracer that stays in the slag, kg: Σ m w / w_slag.
   *
   * @throws IllegalArgumentException when the slag holds none of the tracer
   */
  public static double slagByTracer(List<Portion> portions, Oxide tracer, Analysis slag) {
    double share = slag.share(tracer);
    if (!(share > 0)) {
      throw new IllegalArgumentException("the slag analysis has no " + tracer.formula() + " to trace");
    }
    return OxideMasses.of(portions).mass(tracer) / share;
  }
}
