package daubline.ui.grid;

import daubline.ui.look.Hue;
import daubline.ui.prefs.Preferred;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

/**
 * A cell that shows agreement on a scale from 0 to 100: a tick at the median, a bar from the 5 % to the 95 % point, as
 * high as the coverage is large. The numbers stand in the cells beside it.
 */
public final class BarCell {

  private static final String SIGN = "bar:";

  private BarCell() {
  }

  /** The content of such a cell; empty when nothing was tested. */
  public static String text(double low, double middle, double high, double coverage) {
    return Double.isNaN(middle) ? "" : String.format(Locale.ROOT, "%s%.3f;%.3f;%.3f;%.4f", SIGN, low, middle, high, coverage);
  }

  static boolean isBar(String text) {
    return text.startsWith(SIGN);
  }

  /** What a cell says in words: of a bar its three numbers. */
  static String words(String text) {
    String[] parts = isBar(text) ? text.substring(SIGN.length()).split(";") : null;
    return parts == null ? text : IntStream.range(0, 3).mapToObj(i -> Preferred.number(Math.rint(Double.parseDouble(parts[i])))).collect(Collectors.joining(" – "));
  }

  static void paint(GC gc, String text, Rectangle bounds) {
    String[] parts = text.substring(SIGN.length()).split(";");
    double low = Double.parseDouble(parts[0]);
    double middle = Double.parseDouble(parts[1]);
    double high = Double.parseDouble(parts[2]);
    double coverage = Double.parseDouble(parts[3]);
    int left = bounds.x + GridPainter.PADDING;
    int width = bounds.width - 2 * GridPainter.PADDING;
    int centre = bounds.y + bounds.height / 2;
    gc.setAntialias(SWT.ON);
    gc.setForeground(Hue.HAIRLINE.color());
    gc.drawLine(left, centre, left + width, centre);
    for (int i = 0; i <= 4; i++) {
      gc.drawLine(left + width * i / 4, centre - 3, left + width * i / 4, centre + 3);
    }
    int from = left + (int) Math.round(width * low / 100);
    int to = left + (int) Math.round(width * high / 100);
    int tall = Math.max(3, (int) Math.round((bounds.height - 6) * coverage));
    gc.setBackground(Hue.POND.color());
    gc.setAlpha(110);
    gc.fillRectangle(from, centre - tall / 2, Math.max(2, to - from), tall);
    gc.setAlpha(255);
    gc.setForeground(Hue.INK.color());
    gc.setLineWidth(2);
    int at = left + (int) Math.round(width * middle / 100);
    gc.drawLine(at, bounds.y + 3, at, bounds.y + bounds.height - 4);
    gc.setLineWidth(1);
  }
}
