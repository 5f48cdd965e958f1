package daubline.engine.process.balance;

import java.util.function.ToDoubleFunction;

/** Each yield of a smelt by its own name; two of them are never compared. */
public enum Yield {
  /** Bloom per ore. */
  BLOOM_PER_ORE("bloom per ore", "bloom / ore", m -> m.bloom / m.ore),
  /** Upper bound on iron recovery, since a bloom holds slag. */
  BLOOM_PER_ORE_IRON("bloom per iron in ore (at most)", "bloom / (ore × Fe)", m -> m.bloom / (m.ore * m.oreIron)),
  /** Iron recovery. */
  IRON_RECOVERY("iron recovery", "bloom × Fe in bloom / (ore × Fe)",
      m -> m.bloom * m.bloomIron / (m.ore * m.oreIron)),
  /** Billet per bloom. */
  BILLET_PER_BLOOM("billet per bloom", "billet / bloom", m -> m.billet / m.bloom),
  /** Bar per bloom. */
  BAR_PER_BLOOM("bar per bloom", "bar / bloom", m -> m.bar / m.bloom),
  /** Bar per ore. */
  BAR_PER_ORE("bar per ore", "bar / ore", m -> m.bar / m.ore),
  /** Charcoal per ore. */
  CHARCOAL_PER_ORE("charcoal per ore", "charcoal / ore", m -> m.charcoal / m.ore),
  /** Charcoal per bar. */
  CHARCOAL_PER_BAR("charcoal per bar", "charcoal / bar", m -> m.charcoal / m.bar),
  /** Slag per metal. */
  SLAG_PER_METAL("slag per metal", "slag / (bloom × Fe in bloom)", m -> m.slag / (m.bloom * m.bloomIron));

  private final String label;
  private final String formula;
  private final ToDoubleFunction<Masses> ratio;

  Yield(String label, String formula, ToDoubleFunction<Masses> ratio) {
    this.label = label;
    this.formula = formula;
    this.ratio = ratio;
  }

  /**
   * What a smelt took and gave, kg; NaN where it was not weighed.
   *
   * @param ore dry ore
   * @param oreIron share of iron in the ore, 0 to 1
   * @param charcoal charcoal, preheating included
   * @param bloom raw bloom
   * @param bloomIron share of metallic iron in the bloom, 0 to 1
   * @param billet compacted billet
   * @param bar finished bar
   * @param slag all slag
   */
  public record Masses(double ore, double oreIron, double charcoal, double bloom, double bloomIron, double billet,
      double bar, double slag) {
  }

  /** The name to print. */
  public String label() {
    return label;
  }

  /** The formula in words. */
  public String formula() {
    return formula;
  }

  /** The ratio; NaN when a mass it needs is missing or zero below the line. */
  public double of(Masses masses) {
    double value = ratio.applyAsDouble(masses);
    return Double.isInfinite(value) ? Double.NaN : value;
  }
}
