package daubline.ui.look;

import daubline.engine.inference.Verdict;
import daubline.ui.grid.GridCell.Mark;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;

/** The four shapes: full disc consistent, disc with bar not consistent, ring not tested, triangle check needed. */
public final class MarkShape {

  private MarkShape() {
  }

  /** The shape of a verdict. */
  public static Mark of(Verdict verdict) {
    return switch (verdict) {
      case CONSISTENT -> Mark.CONSISTENT;
      case NOT_CONSISTENT -> Mark.NOT_CONSISTENT;
      case NOT_TESTED -> Mark.NOT_TESTED;
    };
  }

  /** Paints a shape into a square. */
  public static void paint(GC gc, Mark mark, int x, int y, int size) {
    gc.setAntialias(SWT.ON);
    gc.setLineWidth(Math.max(1, size / 8));
    int inset = Math.max(1, size / 8);
    int d = size - 2 * inset;
    switch (mark) {
      case CONSISTENT -> {
        gc.setBackground(Hue.POND.color());
        gc.fillOval(x + inset, y + inset, d, d);
      }
      case NOT_CONSISTENT -> {
        gc.setForeground(Hue.LINING.color());
        gc.setBackground(Hue.LINING.color());
        gc.drawOval(x + inset, y + inset, d, d);
        gc.fillRectangle(x + inset, y + size / 2 - Math.max(1, size / 8), d, Math.max(2, size / 4));
      }
      case NOT_TESTED -> {
        gc.setForeground(Hue.QUIET.color());
        gc.drawOval(x + inset, y + inset, d, d);
      }
      case CHECK_NEEDED -> triangle(gc, x + inset, y + inset, d);
      default -> {
        // no shape
      }
    }
    gc.setLineWidth(1);
  }

  private static void triangle(GC gc, int x, int y, int size) {
    gc.setForeground(Hue.OCHRE.color());
    gc.drawPolygon(new int[] {x + size / 2, y, x + size, y + size, x, y + size});
    gc.drawLine(x + size / 2, y + size / 3, x + size / 2, y + 2 * size / 3);
  }
}
