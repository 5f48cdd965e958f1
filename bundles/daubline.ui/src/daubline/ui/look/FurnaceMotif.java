package daubline.ui.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Rectangle;

/** The sign of the house: an upright furnace, solid below the line to which walls survive, dotted above it. */
public final class FurnaceMotif {

  private static final float LINE = 0.62f;

  private FurnaceMotif() {
  }

  /** Paints it into an area. */
  public static void paint(GC gc, Rectangle area) {
    gc.setAntialias(SWT.ON);
    gc.setLineCap(SWT.CAP_ROUND);
    float line = area.y + area.height * LINE;
    float middle = area.x + area.width / 2f;
    walls(gc, area, middle, line);
    gc.setForeground(Hue.OCHRE.color());
    gc.setLineStyle(SWT.LINE_SOLID);
    gc.setLineWidth(2);
    gc.drawLine(area.x - 14, Math.round(line), area.x + area.width + 14, Math.round(line));
    gc.setForeground(Hue.INK.color());
    gc.setLineWidth(2);
    gc.drawLine(area.x - 24, area.y + area.height, area.x + area.width + 24, area.y + area.height);
  }

  private static void walls(GC gc, Rectangle area, float middle, float line) {
    float below = (area.y + area.height - line) / area.height;
    float foot = area.width * 0.42f;
    float mouth = area.width * 0.27f;
    float atLine = foot - (foot - mouth) * below;
    float wall = area.width * 0.13f;
    gc.setForeground(Hue.INK.color());
    gc.setBackground(Hue.LINING.color());
    for (int side = -1; side <= 1; side += 2) {
      Path solid = new Path(gc.getDevice());
      solid.moveTo(middle + side * foot, area.y + area.height);
      solid.lineTo(middle + side * atLine, line);
      solid.lineTo(middle + side * (atLine - wall), line);
      solid.lineTo(middle + side * (foot - wall), area.y + area.height);
      solid.close();
      gc.fillPath(solid);
      gc.setLineWidth(2);
      gc.setLineStyle(SWT.LINE_SOLID);
      gc.drawPath(solid);
      solid.dispose();
      dotted(gc, middle + side * atLine, line, middle + side * mouth, area.y);
      dotted(gc, middle + side * (atLine - wall), line, middle + side * (mouth - wall * 0.8f), area.y);
    }
  }

  private static void dotted(GC gc, float x1, float y1, float x2, float y2) {
    gc.setLineWidth(3);
    gc.setLineDash(new int[] {1, 9});
    Path path = new Path(gc.getDevice());
    path.moveTo(x1, y1 - 6);
    path.lineTo(x2, y2);
    gc.drawPath(path);
    path.dispose();
    gc.setLineDash(null);
  }
}
