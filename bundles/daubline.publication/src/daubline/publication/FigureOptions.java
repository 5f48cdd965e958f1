package daubline.publication;

import java.util.Set;

/**
 * How figures are written.
 *
 * @param formats endings of the files: png, svg, pdf
 * @param dpi dots per inch of bitmaps, 50 to 2400
 * @param widthMm width of all figures in millimetres, 30 to 1000; NaN for the width that suits each
 */
public record FigureOptions(Set<String> formats, int dpi, double widthMm) {

  /** The endings that can be asked for. */
  public static final Set<String> ENDINGS = Set.of("png", "svg", "pdf");

  private static final int PRINT_DPI = 300;

  public FigureOptions {
    formats = Set.copyOf(formats);
    if (!ENDINGS.containsAll(formats)) {
      throw new IllegalArgumentException("Figures are written as png, svg or pdf, not as " + String.join(", ", formats));
    }
    if (dpi < 50 || dpi > 2400) {
      throw new IllegalArgumentException("Bitmaps have 50 to 2400 dots per inch, not " + dpi);
    }
    if (widthMm < 30 || widthMm > 1000) {
      throw new IllegalArgumentException("A figure is 30 to 1000 mm wide, not " + widthMm);
    }
  }

  /** Bitmaps at 300 dots per inch and both vector formats, each figure at its own width. */
  public static FigureOptions standard() {
    return new FigureOptions(ENDINGS, PRINT_DPI, Double.NaN);
  }
}
