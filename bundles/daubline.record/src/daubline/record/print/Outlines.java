package daubline.record.print;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;

/**
 * Text drawn as outlines in a typeface of the machine, for writings that the typeface of the sheets lacks: letters are joined
 * and put in order as their script asks. Such text is seen and printed, but not found by a search in the file, and need not
 * look the same on another machine.
 */
final class Outlines {

  private static final Font OF_MACHINE = new Font(Font.SANS_SERIF, Font.PLAIN, 1);
  private static final FontRenderContext METRICS = new FontRenderContext(new AffineTransform(), true, true);

  private Outlines() {
  }

  /** Whether a typeface of this machine has a sign. */
  static boolean has(int codePoint) {
    return OF_MACHINE.canDisplay(codePoint);
  }

  /** The width of a text, pt. */
  static float measure(String text, float size) {
    return text.isEmpty() ? 0 : layout(text, size).getAdvance();
  }

  /** Fills the outlines of a text; its baseline begins at a place, measured from the lower left corner of the page. */
  static void fill(PDPageContentStream page, String text, float x, float y, float size) throws IOException {
    if (text.isBlank()) {
      return;
    }
    AffineTransform upright = new AffineTransform(1, 0, 0, -1, x, y);
    boolean any = false;
    double[] at = new double[2];
    double[] p = new double[6];
    for (PathIterator i = layout(text, size).getOutline(upright).getPathIterator(null); !i.isDone(); i.next()) {
      any = true;
      switch (i.currentSegment(p)) {
        case PathIterator.SEG_MOVETO -> page.moveTo((float) p[0], (float) p[1]);
        case PathIterator.SEG_LINETO -> page.lineTo((float) p[0], (float) p[1]);
        case PathIterator.SEG_QUADTO -> page.curveTo(third(at[0], p[0]), third(at[1], p[1]), third(p[2], p[0]), third(p[3], p[1]), (float) p[2], (float) p[3]);
        case PathIterator.SEG_CUBICTO -> page.curveTo((float) p[0], (float) p[1], (float) p[2], (float) p[3], (float) p[4], (float) p[5]);
        default -> page.closePath();
      }
      end(i.currentSegment(p), p, at);
    }
    if (any) {
      page.fill();
    }
  }

  private static TextLayout layout(String text, float size) {
    return new TextLayout(text, OF_MACHINE.deriveFont(size), METRICS);
  }

  /** Where a piece ends, from which the next begins. */
  private static void end(int kind, double[] p, double[] at) {
    int last = switch (kind) {
      case PathIterator.SEG_QUADTO -> 2;
      case PathIterator.SEG_CUBICTO -> 4;
      case PathIterator.SEG_CLOSE -> -1;
      default -> 0;
    };
    if (last >= 0) {
      at[0] = p[last];
      at[1] = p[last + 1];
    }
  }

  /** A control point of the cubic curve that is a curve with one control point. */
  private static float third(double end, double control) {
    return (float) (end + 2 * (control - end) / 3);
  }
}
