package daubline.charts;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * The one typeface of all figures: Liberation Sans, under the SIL Open Font License, which the PDF library carries. It
 * comes with the tool, so that a figure is the same on every machine, and has the widths of Arial, so that an SVG file
 * keeps its layout where only that is installed.
 */
final class Fonts {

  private static final String RESOURCE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  private Fonts() {
  }

  /** The typeface at a size in points. */
  static Font size(double points) {
    return Holder.REGULAR.deriveFont((float) points);
  }

  /** The font file itself; the caller closes it. */
  static InputStream file() {
    return PDDocument.class.getResourceAsStream(RESOURCE);
  }

  private static final class Holder {
    private static final Font REGULAR = load();

    private static Font load() {
      try (InputStream in = file()) {
        return Font.createFont(Font.TRUETYPE_FONT, in);
      } catch (FontFormatException e) {
        throw new IllegalStateException("The typeface of the figures cannot be read", e);
      } catch (IOException e) {
        throw new UncheckedIOException("The typeface of the figures cannot be read", e);
      }
    }
  }
}
