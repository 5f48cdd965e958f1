package daubline.engine.design.search;

/** What an optimal design is best at. */
public enum Criterion {
  /** Effects: the largest determinant of XᵀV⁻¹X, which makes the joint uncertainty of all effects smallest. */
  EFFECTS("D-optimal"),
  /** Prediction: the smallest variance of a predicted outcome, averaged over the allowed settings. */
  PREDICTION("I-optimal");

  private final String word;

  Criterion(String word) {
    this.word = word;
  }

  /** The name statisticians use. */
  public String word() {
    return word;
  }
}
