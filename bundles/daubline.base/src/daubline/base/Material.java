package daubline.base;

/** What a lot, sample or analysis is of. */
public enum Material {
  /** Iron ore, raw or treated. */
  ORE("ore"),
  /** Fuel. */
  CHARCOAL("charcoal"),
  /** Wall and lining material. */
  CLAY("clay"),
  /** Fired or vitrified wall. */
  LINING("lining"),
  /** Added on purpose to change the slag. */
  FLUX("flux"),
  /** Slag of any class. */
  SLAG("slag"),
  /** Bloom, billet or bar. */
  METAL("metal"),
  /** Fuel ash. */
  ASH("ash"),
  /** Anything else. */
  OTHER("other");

  private final String word;

  Material(String word) {
    this.word = word;
  }

  /** The word that tables and screens print. */
  public String word() {
    return word;
  }
}
