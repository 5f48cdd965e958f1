package daubline.base;

/**
 * What became of a typed value: the amount in canonical units, or the finding that says why there is none.
 *
 * @param amount the value; null when the text could not be read
 * @param finding what is wrong; null when the text was read
 */
public record Typed(Amount amount, Finding finding) {

  /** A text that was read. */
  static Typed of(Amount amount) {
    return new Typed(amount, null);
  }

  /** A text that could not be read. */
  static Typed wrong(Finding finding) {
    return new Typed(null, finding);
  }

  /** Whether the text was read. */
  public boolean isRead() {
    return amount != null;
  }
}
