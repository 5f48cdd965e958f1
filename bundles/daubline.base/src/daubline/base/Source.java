package daubline.base;

/**
 * Where a formula, a tolerance or a definition comes from.
 *
 * @param kind what sort of source it is
 * @param text the reference, or for common practice what is customary
 */
public record Source(Kind kind, String text) {

  /** What sort of source stands behind a number. */
  public enum Kind {
    /** A publication that was read. */
    PUBLISHED,
    /** A fact of the trade without a source. */
    COMMON_PRACTICE,
    /** A publication remembered, not read again. */
    FROM_MEMORY,
    /** Follows from other numbers here. */
    DERIVED,
    /** The user's own figure. */
    USER
  }

  /** A publication that was read. */
  public static Source published(String text) {
    return new Source(Kind.PUBLISHED, text);
  }

  /** A fact of the trade without a source. */
  public static Source commonPractice(String text) {
    return new Source(Kind.COMMON_PRACTICE, text);
  }

  /** A publication remembered, not read again. */
  public static Source fromMemory(String text) {
    return new Source(Kind.FROM_MEMORY, text);
  }

  /** Follows from other numbers here. */
  public static Source derived(String text) {
    return new Source(Kind.DERIVED, text);
  }

  /** The user's own figure. */
  public static Source user(String text) {
    return new Source(Kind.USER, text);
  }

  /** The text with the mark that its kind asks for. */
  @Override
  public String toString() {
    return switch (kind) {
      case PUBLISHED -> text;
      case COMMON_PRACTICE -> text + " (common practice, no source)";
      case FROM_MEMORY -> text + " (from memory)";
      case DERIVED -> text + " (derived)";
      case USER -> text + " (entered by the user)";
    };
  }
}
