package daubline.ui.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

/** The title of a page of a {@link PageBook}, always whole. */
final class PageTitle extends Canvas {

  private static final int SIDE = 8;
  private static final int ABOVE = 5;
  private static final int LINE = 2;

  private final String key;
  private final String text;
  private final boolean isBelow;
  private boolean isShown;

  PageTitle(Composite bar, String key, String text, boolean isBelow) {
    super(bar, SWT.DOUBLE_BUFFERED);
    this.key = key;
    this.text = text;
    this.isBelow = isBelow;
    setFont(Fonts.PLAIN.font());
    setData("id", key);
    Pages.named(this, text, "");
    getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
      @Override
      public void getRole(AccessibleControlEvent e) {
        e.detail = ACC.ROLE_TABITEM;
      }

      @Override
      public void getState(AccessibleControlEvent e) {
        e.detail = ACC.STATE_SELECTABLE | ACC.STATE_FOCUSABLE | (isShown ? ACC.STATE_SELECTED : 0) | (isFocusControl() ? ACC.STATE_FOCUSED : 0);
      }
    });
    addListener(SWT.Paint, e -> paint(e.gc));
    addListener(SWT.FocusIn, e -> redraw());
    addListener(SWT.FocusOut, e -> redraw());
  }

  String key() {
    return key;
  }

  /** The text that stands there. */
  String text() {
    return text;
  }

  void setShown(boolean shown) {
    if (shown != isShown) {
      isShown = shown;
      getAccessible().selectionChanged();
      redraw();
    }
  }

  @Override
  public Point computeSize(int widthHint, int heightHint, boolean changed) {
    GC gc = new GC(this);
    try {
      gc.setFont(getFont());
      Point size = gc.textExtent(text);
      return new Point(size.x + 2 * SIDE, size.y + 2 * ABOVE);
    } finally {
      gc.dispose();
    }
  }

  private void paint(GC gc) {
    Point size = getSize();
    gc.setBackground((isShown ? Hue.ASH : Hue.BAND).color());
    gc.fillRectangle(0, 0, size.x, size.y);
    if (isShown) {
      gc.setBackground(Hue.OCHRE.color());
      gc.fillRectangle(0, isBelow ? size.y - LINE : 0, size.x, LINE);
    }
    gc.setForeground(Hue.INK.color());
    gc.drawText(text, SIDE, ABOVE, true);
    if (isFocusControl()) {
      gc.setLineStyle(SWT.LINE_DOT);
      gc.drawRectangle(LINE + 1, LINE + 1, size.x - 2 * LINE - 3, size.y - 2 * LINE - 3);
    }
  }
}
