package daubline.base;

/** The decimal sign of a file or of typed text. */
public enum DecimalSign {
  /** 12.5 */
  POINT('.'),
  /** 12,5 */
  COMMA(',');

  private final char sign;

  DecimalSign(char sign) {
    this.sign = sign;
  }

  /** The character itself. */
  public char sign() {
    return sign;
  }

  /** The other sign. */
  public DecimalSign other() {
    return this == POINT ? COMMA : POINT;
  }
}
