package daubline.charts;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Bidi;
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

  /**
   * The typeface for a text, at a size in points: that of the tool, or for letters that it lacks and for writing from right to left
   * the machine's own, so that nothing is lost. A figure with such letters need not be the same on another machine.
   */
  static Font size(String text, double points) {
    char[] letters = text.toCharArray();
    boolean own = Holder.REGULAR.canDisplayUpTo(text) < 0 && !Bidi.requiresBidi(letters, 0, letters.length);
    return own ? size(points) : Holder.OF_MACHINE.deriveFont((float) points);
  }

  /** The font file itself; the caller closes it. */
  static InputStream file() {
    return PDDocument.class.getResourceAsStream(RESOURCE);
  }

  private static final class Holder {
    private static final Font REGULAR = load();
    private static final Font OF_MACHINE = new Font(Font.SANS_SERIF, Font.PLAIN, 1);

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
