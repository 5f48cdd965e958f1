package daubline.base;

/** How an analysis reports its iron. */
public enum IronBasis {
  /** Total iron given as FeO. */
  FEO("all iron as FeO"),
  /** Total iron given as Fe2O3. */
  FE2O3("all iron as Fe2O3"),
  /** Both given. */
  BOTH("FeO and Fe2O3"),
  /** Total iron given as the element. */
  FE("iron as Fe"),
  /** Iron bound in oxides given as oxides, metallic iron beside it as the element. */
  WITH_METAL("oxides and metallic iron"),
  /** The source does not say. */
  NOT_STATED("not stated");

  private final String word;

  IronBasis(String word) {
    this.word = word;
  }

  /** The word that tables and screens print. */
  public String word() {
    return word;
  }
}
