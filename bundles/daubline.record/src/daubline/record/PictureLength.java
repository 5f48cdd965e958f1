package daubline.record;

import daubline.base.Amount;

/**
 * A length on a scaled picture with its uncertainty to first order (JCGM 100:2008, 5.1.2): L = S · d / s, where S is the
 * known length, s its distance on the picture and d the distance measured. Every point is taken to be set by itself, with
 * the same standard uncertainty along each side of the picture; a distance has two of them. The picture must be square on
 * and the scale in the plane of what is measured: nothing here can tell when it is not.
 *
 * @param length the length, m
 * @param fromKnown what the uncertainty of the known length adds by itself, m
 * @param fromScale what setting the two points of the scale adds, m
 * @param fromPoints what setting the two points of the distance adds, m
 * @param clear whether both distances are so long beside the pointing that first order will do
 */
public record PictureLength(double length, double fromKnown, double fromScale, double fromPoints, boolean clear) {

  /** How the length follows, as it is printed. */
  public static final String FORMULA = "L = S · d / s";

  /** Two points of a distance; up to this share of it the curvature that first order leaves out is below half a per cent. */
  private static final double CLEAR_SHARE = 0.1;

  /**
   * Two points on a picture.
   *
   * @param x1 pixels from the left edge
   * @param y1 pixels from the upper edge
   * @param pointing standard uncertainty of each coordinate, pixels, 0 or more
   */
  public record Line(double x1, double y1, double x2, double y2, double pointing) {

    /** Distance of the points, pixels. */
    public double pixels() {
      return Math.hypot(x2 - x1, y2 - y1);
    }

    /** Standard uncertainty of the distance, pixels: one coordinate of each end lies along it. */
    public double sigma() {
      return Math.sqrt(2) * pointing;
    }
  }

  /**
   * The length of a line.
   *
   * @param known the known length, m: a number above zero, with ± or as a range when its uncertainty is stated
   * @param scale where the known length lies
   * @param line what is measured
   * @throws IllegalArgumentException when the known length is none, or the two points of the scale or the line are one
   */
  public static PictureLength of(Amount known, Line scale, Line line) {
    double s = scale.pixels();
    double d = line.pixels();
    if (!isKnown(known) || !(s > 0) || !(d > 0)) {
      throw new IllegalArgumentException("No length: " + known + ", " + s + " px, " + d + " px");
    }
    double length = value(known) * d / s;
    boolean clear = scale.sigma() <= CLEAR_SHARE * s && line.sigma() <= CLEAR_SHARE * d;
    return new PictureLength(length, d / s * sigma(known), length / s * scale.sigma(), value(known) / s * line.sigma(), clear);
  }

  /** Whether an amount says a length above zero with which a picture can be scaled. */
  public static boolean isKnown(Amount known) {
    return switch (known.kind()) {
      case EXACT, PLUS_MINUS -> known.value() > 0;
      case RANGE -> known.low() > 0 && known.high() > known.low();
      default -> false;
    };
  }

  private static double value(Amount known) {
    return known.kind() == daubline.base.ValueKind.RANGE ? (known.low() + known.high()) / 2 : known.value();
  }

  /** A range is taken for a rectangular distribution (JCGM 100:2008, 4.3.7). */
  private static double sigma(Amount known) {
    return known.kind() == daubline.base.ValueKind.RANGE ? (known.high() - known.low()) / Math.sqrt(12) : known.sigmaOr(0);
  }

  /** Combined standard uncertainty, m. */
  public double sigma() {
    return Math.sqrt(fromKnown * fromKnown + fromScale * fromScale + fromPoints * fromPoints);
  }

  /** As a claim states it. */
  public Amount amount() {
    return sigma() > 0 ? Amount.plusMinus(length, sigma()) : Amount.exact(length);
  }
}
