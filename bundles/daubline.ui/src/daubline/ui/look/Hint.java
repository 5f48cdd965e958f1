package daubline.ui.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/**
 * The lines below a table that say what is asked for, or what is wrong. What is wrong takes the room it needs; of what is
 * asked for there stands as much as fits, whole sentences if it can be, and all of it in the tip.
 */
public final class Hint {

  private static final int LINES = 2;
  private static final int NARROWEST = 200;
  private static final int INDENT = 6;

  private final Label label;
  private String said = "";
  private boolean isWrong;

  /** Takes its two lines at the end of a page whose layout is a grid. */
  public Hint(Composite page, String id) {
    label = Pages.text(page, "", Fonts.PLAIN.font(), NARROWEST);
    label.setData("id", id);
    GridData lines = (GridData) label.getLayoutData();
    lines.horizontalIndent = INDENT;
    lines.heightHint = LINES * Fonts.PLAIN.lineHeight(label);
    label.addListener(SWT.Resize, e -> say(said, isWrong));
  }

  /** Says something; what is wrong stands out. */
  public void say(String text, boolean wrong) {
    said = text;
    isWrong = wrong;
    if (!label.isDisposed()) {
      label.setText((wrong ? text : fitting(text)).replace("&", "&&"));
      grow(wrong);
      label.setForeground(wrong ? Hue.LINING.color() : Hue.QUIET.color());
      label.setToolTipText(text.isEmpty() ? null : text.replace("&", "&&"));
    }
  }

  private void grow(boolean wrong) {
    GridData lines = (GridData) label.getLayoutData();
    int usual = LINES * Fonts.PLAIN.lineHeight(label);
    int height = wrong && label.getSize().x > 0 ? Math.max(usual, label.computeSize(label.getSize().x, SWT.DEFAULT).y) : usual;
    if (height != lines.heightHint) {
      lines.heightHint = height;
      label.getParent().layout();
    }
  }

  private String fitting(String text) {
    if (label.getSize().x == 0 || fits(text)) {
      return text;
    }
    for (int end = text.lastIndexOf(". ", text.length() - 2); end > 0; end = text.lastIndexOf(". ", end - 1)) {
      if (fits(text.substring(0, end + 1) + " …")) {
        return text.substring(0, end + 1) + " …";
      }
    }
    // one long sentence: to the last whole word
    for (int end = text.lastIndexOf(' '); end > 0; end = text.lastIndexOf(' ', end - 1)) {
      if (fits(text.substring(0, end) + " …")) {
        return text.substring(0, end) + " …";
      }
    }
    return text;
  }

  private boolean fits(String text) {
    return Fonts.PLAIN.linesOf(text, label.getSize().x) <= LINES;
  }
}
