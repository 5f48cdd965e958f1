package daubline.ui.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

/**
 * A text of some sentences that wraps. The platform's own label is broken into lines anew several times whenever its page is laid out, which
 * for a page with many sentences takes half a second; this one remembers how high it is at the width it was last asked for.
 */
public final class Passage extends Canvas {

  private final Fonts font;
  private final Hue hue;
  private final TextLayout layout;
  private String text = "";
  /** The size at the width that was asked for last; none after the text has changed. */
  private Point known;

  /** An empty passage on the ground of pages. */
  public Passage(Composite parent, Fonts font, Hue hue) {
    super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
    this.font = font;
    this.hue = hue;
    layout = new TextLayout(getDisplay());
    addListener(SWT.Dispose, e -> layout.dispose());
    addListener(SWT.Paint, e -> paint(e.gc));
    Themes.onChange(this, this::redraw);
    getAccessible().addAccessibleListener(new AccessibleAdapter() {
      @Override
      public void getName(AccessibleEvent e) {
        e.result = text;
      }
    });
    getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
      @Override
      public void getRole(AccessibleControlEvent e) {
        e.detail = ACC.ROLE_LABEL;
      }
    });
  }

  /** Says something else; the page has to be laid out afterwards. */
  public void setText(String said) {
    if (!said.equals(text)) {
      text = said;
      known = null;
      redraw();
    }
  }

  /** What it says. */
  public String getText() {
    return text;
  }

  @Override
  public Point computeSize(int widthHint, int heightHint, boolean changed) {
    if (known == null || known.x != widthHint) {
      lay(widthHint == SWT.DEFAULT ? -1 : Math.max(1, widthHint));
      Rectangle bounds = layout.getBounds();
      known = new Point(widthHint == SWT.DEFAULT ? bounds.width : widthHint, bounds.height);
    }
    return new Point(known.x, heightHint == SWT.DEFAULT ? known.y : heightHint);
  }

  private void lay(int width) {
    layout.setFont(font.font());
    layout.setText(text);
    layout.setWidth(width);
  }

  private void paint(GC gc) {
    Rectangle area = getClientArea();
    gc.setBackground(Hue.ASH.color());
    gc.fillRectangle(area);
    gc.setForeground(hue.color());
    lay(Math.max(1, area.width));
    layout.draw(gc, 0, 0);
  }
}
