package daubline.base;

/** What a choice of a reconstruction rests on. */
public enum Basis {
  /** The remains show it. */
  EVIDENCE("evidence"),
  /** Another find or an ethnographic record shows it. */
  ANALOGY("analogy"),
  /** It would not work otherwise. */
  PRACTICAL_NEED("practical need"),
  /** Nothing speaks for it yet. */
  GUESS("guess");

  private final String word;

  Basis(String word) {
    this.word = word;
  }

  /** The word that tables and screens print. */
  public String word() {
    return word;
  }
}
