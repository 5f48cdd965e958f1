package daubline.ui.explain;

import daubline.ui.Words;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import org.eclipse.jface.dialogs.PopupDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;

/**
 * The small window that F1 opens on a field or a cell. Its text has the keyboard, can be selected and copied; Esc closes it and
 * gives the keyboard back, F1 in it opens the help of the part below.
 */
public final class WhatIsThis extends PopupDialog {

  private static final int LETTERS = 64;
  private static final int MOST_LINES = 22;
  private static final int MARGIN = 8;

  private final Control about;
  private final Point place;
  private final List<Explanation> explanations;
  private final List<StyleRange> strong = new ArrayList<>();
  private StyledText text;

  private WhatIsThis(Control about, Point place, List<Explanation> explanations) {
    super(about.getShell(), SWT.RESIZE | SWT.ON_TOP, true, false, false, false, false, null, null);
    this.about = about;
    this.place = place;
    this.explanations = explanations;
  }

  /** Has F1 on a control explain what is said of it at that moment; when nothing is, F1 opens the help of the part as elsewhere. */
  public static void on(Control control, Supplier<List<Explanation>> explanations) {
    on(control, explanations, c -> new Point(0, c.getSize().y));
  }

  /** The same for a control of which only a place is explained, which the window then stands at. */
  public static void on(Control control, Supplier<List<Explanation>> explanations, Function<Control, Point> place) {
    control.addListener(SWT.Help, e -> {
      List<Explanation> told = explanations.get().stream().filter(Explanation::isTelling).toList();
      if (told.isEmpty()) {
        helpAround(control);
      } else {
        new WhatIsThis(control, control.toDisplay(place.apply(control)), told).open();
      }
    });
  }

  /** Asks for help at a control as F1 does: the nearest that has some to give. */
  public static void ask(Control control) {
    for (Control c = control; c != null; c = c.getParent()) {
      if (c.isListening(SWT.Help)) {
        c.notifyListeners(SWT.Help, new Event());
        return;
      }
    }
  }

  private static void helpAround(Control control) {
    ask(control.getParent());
  }

  @Override
  protected Control createContents(Composite parent) {
    parent.setBackground(Hue.PAPER.color());
    Composite page = new Composite(parent, SWT.NONE);
    page.setBackground(Hue.PAPER.color());
    GridLayout layout = new GridLayout();
    layout.marginWidth = MARGIN;
    layout.marginHeight = MARGIN;
    page.setLayout(layout);
    page.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    text = new StyledText(page, SWT.READ_ONLY | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL);
    text.setAlwaysShowScrollBars(false);
    text.setBackground(Hue.PAPER.color());
    text.setForeground(Hue.INK.color());
    text.setFont(Fonts.PLAIN.font());
    text.setData("id", "whatIsThis");
    Pages.named(text, Words.of("what.title", explanations.get(0).term()), "");
    write();
    GridData room = new GridData(SWT.FILL, SWT.FILL, true, true);
    room.widthHint = LETTERS * Fonts.PLAIN.characterWidth(text);
    room.heightHint = Math.min(MOST_LINES * Fonts.PLAIN.lineHeight(text), text.computeSize(room.widthHint, SWT.DEFAULT).y);
    text.setLayoutData(room);
    Link more = new Link(page, SWT.NONE);
    more.setText("<a>" + Words.of("what.more") + "</a>");
    more.setBackground(Hue.PAPER.color());
    more.setData("id", "whatIsThis.more");
    Pages.named(more, Words.of("what.more"), "");
    more.addListener(SWT.Selection, e -> more());
    for (Control part : new Control[] {text, more}) {
      part.addListener(SWT.KeyDown, e -> key(e.keyCode));
    }
    parent.addListener(SWT.Help, e -> more());
    return page;
  }

  private void key(int keyCode) {
    if (keyCode == SWT.ESC) {
      close();
    }
  }

  private void more() {
    Control asked = about;
    close();
    if (!asked.isDisposed()) {
      helpAround(asked);
    }
  }

  private void write() {
    StringBuilder all = new StringBuilder();
    for (Explanation e : explanations) {
      if (!all.isEmpty()) {
        all.append("\n\n");
      }
      strong(all, e.term(), true);
      for (Explanation.Line line : e.lines()) {
        all.append('\n');
        if (!line.label().isEmpty()) {
          strong(all, line.label() + ":", false);
          all.append(' ');
        }
        all.append(line.text());
      }
    }
    text.setText(all.toString());
    strong.forEach(text::setStyleRange);
  }

  private void strong(StringBuilder all, String part, boolean heading) {
    StyleRange range = new StyleRange(all.length(), part.length(), heading ? Hue.OCHRE.color() : Hue.INK.color(), null);
    range.font = Fonts.STRONG.font();
    strong.add(range);
    all.append(part);
  }

  @Override
  protected Control getFocusControl() {
    return text;
  }

  @Override
  protected Point getInitialLocation(Point size) {
    Rectangle screen = about.getMonitor().getClientArea();
    int x = Math.max(screen.x, Math.min(place.x, screen.x + screen.width - size.x));
    int y = Math.max(screen.y, Math.min(place.y, screen.y + screen.height - size.y));
    return new Point(x, y);
  }

  @Override
  public boolean close() {
    Shell shell = getShell();
    boolean had = shell != null && !shell.isDisposed() && text.getDisplay().getActiveShell() == shell;
    boolean closed = super.close();
    if (had && !about.isDisposed()) {
      about.getShell().forceActive();
    }
    return closed;
  }
}
