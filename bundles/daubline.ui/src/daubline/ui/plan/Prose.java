package daubline.ui.plan;

import daubline.ui.Words;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Text that wraps at the width of its place and scrolls when it is longer. */
final class Prose {

  private static final int LEAST = 100;

  private final ScrolledComposite scroll;
  private final Label label;

  /**
   * An empty text.
   *
   * @param id by which it is found
   */
  Prose(Composite parent, String id) {
    scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
    scroll.setBackground(Hue.ASH.color());
    scroll.setExpandHorizontal(true);
    scroll.setExpandVertical(true);
    label = Pages.text(scroll, "", Fonts.PLAIN.font(), SWT.DEFAULT);
    label.setData("id", id);
    scroll.setContent(label);
    scroll.addListener(SWT.Resize, e -> height());
  }

  /** Shows a text. */
  void show(String text) {
    label.setText(text.lines().map(Words::said).collect(Collectors.joining("\n")).replace("&", "&&"));
    height();
  }

  private void height() {
    scroll.setMinHeight(label.computeSize(Math.max(LEAST, scroll.getClientArea().width), SWT.DEFAULT).y);
  }
}
