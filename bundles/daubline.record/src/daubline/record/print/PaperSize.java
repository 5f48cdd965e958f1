package daubline.record.print;

/** Sizes of paper in points, upright: ISO 216 and ANSI/ASME Y14.1. */
public enum PaperSize {
  /** 210 × 297 mm. */
  A4(595.276f, 841.890f),
  /** 8.5 × 11 in. */
  LETTER(612, 792);

  private final float width;
  private final float height;

  PaperSize(float width, float height) {
    this.width = width;
    this.height = height;
  }

  /** Width of the upright sheet, pt. */
  public float width() {
    return width;
  }

  /** Height of the upright sheet, pt. */
  public float height() {
    return height;
  }
}
