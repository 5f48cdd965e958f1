package daubline.ui.look;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

/** The frame around what has the keyboard, alike on all that we draw ourselves. */
public final class FocusFrame {

  private static final int WIDE = 2;

  private FocusFrame() {
  }

  /** Paints it just inside an area. */
  public static void paint(GC gc, Rectangle area) {
    gc.setForeground(Hue.OCHRE.color());
    gc.setLineWidth(WIDE);
    gc.drawRectangle(area.x + 1, area.y + 1, area.width - WIDE, area.height - WIDE);
    gc.setLineWidth(1);
  }
}
