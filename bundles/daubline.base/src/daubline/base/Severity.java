package daubline.base;

/** How much a finding matters. */
public enum Severity {
  /** Wrong or impossible; nothing is taken over until it is mended. */
  ERROR,
  /** Unlikely; taken over as it stands, and shown. */
  WARNING,
  /** Worth knowing. */
  NOTE
}
