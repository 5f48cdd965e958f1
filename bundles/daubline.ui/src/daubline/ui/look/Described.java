package daubline.ui.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The body of a view with a line above it that says what it shows, and wraps when the view is narrow. */
public final class Described extends Composite {

  private static final int NARROW = 120;

  private final Label line;
  private final Composite body;

  /** A described body. */
  public Described(Composite parent) {
    super(parent, SWT.NONE);
    org.eclipse.swt.layout.GridLayout layout = new org.eclipse.swt.layout.GridLayout();
    layout.marginWidth = 0;
    layout.marginHeight = 0;
    setLayout(layout);
    setBackground(Hue.ASH.color());
    line = Pages.text(this, "", Fonts.PLAIN.font(), NARROW);
    ((GridData) line.getLayoutData()).horizontalIndent = 6;
    ((GridData) line.getLayoutData()).verticalIndent = 3;
    ((GridData) line.getLayoutData()).exclude = true;
    line.setVisible(false);
    body = new Composite(this, SWT.NONE);
    body.setLayout(new org.eclipse.swt.layout.FillLayout());
    body.setBackground(Hue.PAPER.color());
    body.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
  }

  /** Where the content goes. */
  public Composite body() {
    return body;
  }

  /** Says what is shown; an empty text takes no room. */
  public void say(String text) {
    if (!line.isDisposed() && !line.getText().equals(text)) {
      line.setText(text);
      line.setVisible(!text.isEmpty());
      ((GridData) line.getLayoutData()).exclude = text.isEmpty();
      layout(true, true);
    }
  }
}
