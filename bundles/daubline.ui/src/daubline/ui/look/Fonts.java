package daubline.ui.look;

import java.util.function.ToIntFunction;
import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.FontRegistry;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/** The few sizes of writing; all follow the size that the desktop gives. */
public enum Fonts {
  /** Running text. */
  PLAIN(1, SWT.NORMAL),
  /** Names in running text. */
  STRONG(1, SWT.BOLD),
  /** Second-order headings and main choices. */
  LARGER(1.15, SWT.NORMAL),
  /** Headings of pages. */
  TITLE(1.7, SWT.NORMAL),
  /** Numbers that a page is about. */
  FIGURES(2.2, SWT.NORMAL);

  private final double scale;
  private final int style;

  Fonts(double scale, int style) {
    this.scale = scale;
    this.style = style;
  }

  /** The font; the platform disposes of it. */
  public Font font() {
    FontRegistry registry = JFaceResources.getFontRegistry();
    String key = "daubline.ui.font." + name();
    if (!registry.hasValueFor(key)) {
      FontDescriptor base = FontDescriptor.createFrom(JFaceResources.getDialogFont()).setStyle(style);
      int height = JFaceResources.getDialogFont().getFontData()[0].getHeight();
      registry.put(key, base.setHeight((int) Math.round(height * scale)).getFontData());
    }
    return registry.get(key);
  }

  /** Height of a line on the screen of a control, pixels. */
  public int lineHeight(Control control) {
    return measure(control, gc -> gc.getFontMetrics().getHeight());
  }

  /** Mean width of a character on the screen of a control, pixels. */
  public int characterWidth(Control control) {
    return measure(control, gc -> (int) Math.ceil(gc.getFontMetrics().getAverageCharacterWidth()));
  }

  /** Lines that a text needs when it wraps at a width, pixels. */
  public int linesOf(String text, int width) {
    TextLayout layout = new TextLayout(Display.getCurrent());
    try {
      layout.setFont(font());
      layout.setText(text);
      layout.setWidth(width);
      return layout.getLineCount();
    } finally {
      layout.dispose();
    }
  }

  private int measure(Control control, ToIntFunction<GC> measure) {
    GC gc = new GC(control);
    try {
      gc.setFont(font());
      return measure.applyAsInt(gc);
    } finally {
      gc.dispose();
    }
  }
}
