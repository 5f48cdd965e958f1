package daubline.ui.look;

import java.util.Arrays;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Small building blocks of pages, so that all look the same. */
public final class Pages {

  private Pages() {
  }

  /** A composite on the ground of pages with a grid of so many columns. */
  public static Composite plain(Composite parent, int columns) {
    Composite composite = new Composite(parent, SWT.NONE);
    GridLayout layout = new GridLayout(columns, false);
    composite.setLayout(layout);
    composite.setBackground(Hue.ASH.color());
    return composite;
  }

  /** A composite without margins. */
  public static Composite tight(Composite parent, int columns) {
    Composite composite = plain(parent, columns);
    GridLayout layout = (GridLayout) composite.getLayout();
    layout.marginWidth = 0;
    layout.marginHeight = 0;
    return composite;
  }

  /**
   * Two parts beside each other while there is room for both, otherwise one above the other.
   *
   * @param characters letters of the usual writing that the two need beside each other
   */
  public static SashForm beside(Composite parent, int characters) {
    SashForm sash = new SashForm(parent, SWT.HORIZONTAL);
    sash.setBackground(Hue.ASH.color());
    sash.addListener(SWT.Resize, e -> {
      int wanted = sash.getClientArea().width < characters * Fonts.PLAIN.characterWidth(sash) ? SWT.VERTICAL : SWT.HORIZONTAL;
      if (sash.getOrientation() != wanted) {
        sash.setOrientation(wanted);
      }
    });
    return sash;
  }

  /** Text that wraps at a width. */
  public static Label text(Composite parent, String text, Font font, int wrap) {
    Label label = new Label(parent, SWT.WRAP);
    // an ampersand would underline the letter after it
    label.setText(text.replace("&", "&&"));
    label.setFont(font);
    label.setBackground(Hue.ASH.color());
    label.setForeground(Hue.INK.color());
    GridData data = new GridData(SWT.FILL, SWT.TOP, true, false);
    data.widthHint = wrap;
    label.setLayoutData(data);
    return label;
  }

  /**
   * A page that scrolls. Its bar is always there: one that came with a longer text would make the page narrower, and all would be
   * laid out twice.
   */
  public static ScrolledComposite scrolled(Composite parent) {
    ScrolledComposite scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
    scroll.setAlwaysShowScrollBars(true);
    scroll.setShowFocusedControl(true);
    scroll.setBackground(Hue.ASH.color());
    scroll.setExpandHorizontal(true);
    scroll.setExpandVertical(true);
    return scroll;
  }

  /** A text of some sentences that are told later, and wraps at a width. */
  public static Passage passage(Composite parent, Fonts font, Hue hue, int wrap) {
    Passage passage = new Passage(parent, font, hue);
    GridData data = new GridData(SWT.FILL, SWT.TOP, true, false);
    data.widthHint = wrap;
    passage.setLayoutData(data);
    return passage;
  }

  /**
   * Makes a page as high as its content is at a width, and lays it out once: wrapped texts take long, and a page that becomes higher
   * is laid out by its place already.
   */
  public static void fit(ScrolledComposite scroll, int width) {
    Composite page = (Composite) scroll.getContent();
    Point before = page.getSize();
    scroll.setMinHeight(page.computeSize(width, SWT.DEFAULT, true).y);
    if (before.equals(page.getSize())) {
      page.layout(false);
    }
  }

  /** A heading with space above it. */
  public static Label heading(Composite parent, String text) {
    Label label = text(parent, text, Fonts.STRONG.font(), SWT.DEFAULT);
    ((GridData) label.getLayoutData()).verticalIndent = 12;
    label.setForeground(Hue.OCHRE.color());
    return label;
  }

  /**
   * Offers choices and selects one; a list that stays the same is left alone, for the platform builds it anew at a price; the keyboard stays.
   *
   * @param selected place of the choice, -1 for none
   */
  public static void offer(Combo combo, Stream<String> choices, int selected) {
    String[] items = choices.toArray(String[]::new);
    boolean hadKeyboard = combo.isFocusControl();
    if (!Arrays.equals(items, combo.getItems())) {
      combo.setItems(items);
    }
    // a list built anew loses the keyboard, and an empty one cannot have it; then keys would go nowhere
    if (hadKeyboard && (items.length == 0 || !combo.setFocus())) {
      // to the next control would not do: it may be about to go as well
      combo.getParent().forceFocus();
    }
    if (selected < 0) {
      combo.deselectAll();
    } else {
      combo.select(selected);
    }
  }

  /** Names the line of a dialog in which it says what it is for or what is wrong, which the platform leaves without a name. */
  public static void nameMessage(Composite dialog, String name) {
    for (Control child : dialog.getChildren()) {
      if (child instanceof Text text && (text.getStyle() & SWT.READ_ONLY) != 0 && text.getData("name") == null) {
        named(text, name, "");
      } else if (child instanceof Composite part) {
        nameMessage(part, name);
      }
    }
  }

  /** Gives a control the name and the explanation that a screen reader says. */
  public static void named(Control control, String name, String about) {
    control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
      @Override
      public void getName(AccessibleEvent e) {
        e.result = name;
      }

      @Override
      public void getDescription(AccessibleEvent e) {
        e.result = about;
      }
    });
    control.setData("name", name);
    if (!about.isEmpty()) {
      control.setToolTipText(about);
    }
  }
}
