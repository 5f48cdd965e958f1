package daubline.engine.inference;

/** The groups in which criteria are weighed, so that ten oxides are not ten votes. */
public enum Group {
  /** Shape and size of the furnace as found. */
  GEOMETRY("geometry"),
  /** What the fire did to the wall. */
  FIRE("fire"),
  /** Slag and other residues by class, mass and form. */
  RESIDUES("residues"),
  /** Composition. */
  CHEMISTRY("chemistry"),
  /** What is left of the fuel. */
  FUEL("fuel"),
  /** Bloom and iron, where evidenced. */
  PRODUCTS("products");

  private final String word;

  Group(String word) {
    this.word = word;
  }

  /** The word that tables and screens print. */
  public String word() {
    return word;
  }
}
