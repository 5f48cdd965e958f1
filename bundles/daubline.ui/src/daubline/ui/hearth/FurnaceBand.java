package daubline.ui.hearth;

import daubline.ui.Words;
import daubline.ui.look.FurnaceMotif;
import daubline.ui.look.Hue;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

/** The band beside the start page with the furnace: solid below the line, dotted above it. */
final class FurnaceBand extends Canvas {

  static final int WIDTH = 250;

  FurnaceBand(Composite parent) {
    super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
    setBackground(Hue.BAND.color());
    addListener(SWT.Paint, e -> {
      Rectangle area = getClientArea();
      e.gc.setBackground(Hue.BAND.color());
      e.gc.fillRectangle(area);
      int height = Math.min(area.height - 60, 420);
      FurnaceMotif.paint(e.gc, new Rectangle(area.x + 40, area.y + Math.max(24, (area.height - height) / 2 - 20), area.width - 80, height));
    });
    getAccessible().addAccessibleListener(org.eclipse.swt.accessibility.AccessibleListener.getNameAdapter(e -> e.result = Words.of("hearth.motif")));
  }

  @Override
  public org.eclipse.swt.graphics.Point computeSize(int widthHint, int heightHint, boolean changed) {
    return new org.eclipse.swt.graphics.Point(WIDTH, heightHint == SWT.DEFAULT ? 300 : heightHint);
  }
}
