package daubline.criteria;

/** The two sides of a comparison. */
enum Side {
  EVIDENCE("the evidence sheet"),
  TRIAL("the trial's remains sheet");

  private final String word;

  Side(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }
}
