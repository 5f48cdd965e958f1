package daubline.app.tests;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.DateTime;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;

/**
 * Goes through one screen with Tab, and back with Shift+Tab, and looks at each stop: that it is reached, that the focus can
 * be seen there and leaves it again, and that it says its name.
 */
final class Walk {

  private static final int AROUND = 3;
  /** Stops of the platform's own bars that may stand between ours. */
  private static final int SPARE = 60;
  private static final long SETTLE_MILLIS = 40;
  private static final long LONG_MILLIS = 350;
  private static final long PATIENCE_MILLIS = 2000;

  private final String where;
  private final Composite screen;
  private final List<String> complaints;
  private final Set<Control> looked = new LinkedHashSet<>();

  Walk(String where, Composite screen, List<String> complaints) {
    this.where = where;
    this.screen = screen;
    this.complaints = complaints;
  }

  /** Walks both ways; says how many stops the screen has. */
  int go() {
    Window.idle();
    Keys.rest(SETTLE_MILLIS);
    List<Control> stops = stops();
    stops.forEach(this::name);
    if (!stops.isEmpty()) {
      walk(stops, false);
      walk(stops(), true);
    }
    return stops.size();
  }

  private List<Control> stops() {
    return Window.all(screen).stream().filter(c -> c.isVisible() && c.isEnabled() && c.getSize().x > 0 && c.getSize().y > 0 && isStop(c)).toList();
  }

  /** What a person can do something with; of radio buttons the chosen one, from which arrows go on. */
  private static boolean isStop(Control control) {
    return switch (control) {
      case NatTable grid -> true;
      case Text text -> true;
      case Button button -> (button.getStyle() & SWT.RADIO) == 0 || button.getSelection();
      case Combo combo -> true;
      case CCombo combo -> true;
      case StyledText text -> true;
      case Link link -> true;
      case Tree tree -> true;
      case Table table -> true;
      case org.eclipse.swt.widgets.List list -> true;
      case Spinner spinner -> true;
      case DateTime date -> true;
      case CTabFolder folder -> false;
      case Canvas canvas -> takesKeys(canvas);
      default -> false;
    };
  }

  /** A drawing that listens to keys; of the titles of pages only the shown one is a stop. */
  private static boolean takesKeys(Canvas canvas) {
    Composite parent = canvas.getParent();
    return canvas.getListeners(SWT.KeyDown).length > 0 && (!canvas.getClass().getSimpleName().equals("PageTitle") || List.of(parent.getTabList()).contains(canvas));
  }

  private void walk(List<Control> stops, boolean back) {
    String way = back ? "Shift+Tab" : "Tab";
    Set<Control> left = new LinkedHashSet<>(stops);
    Control now = start(stops, back);
    int presses = 0;
    while (now != null && presses < 2 * stops.size() + SPARE) {
      boolean last = left.remove(now) && left.isEmpty();
      now = step(now, back, way);
      presses++;
      if (last) {
        break;
      }
    }
    // coming from a tab of the platform the toolkit goes past the last link, to which Tab comes
    left.stream().filter(c -> !back || !(c instanceof Link)).filter(c -> !c.isDisposed() && c.isVisible() && c.isEnabled()).forEach(c -> complain(way + " never comes to", c));
  }

  private static Control start(List<Control> stops, boolean back) {
    Control first = back ? stops.get(stops.size() - 1) : stops.get(0);
    first.forceFocus();
    long end = System.currentTimeMillis() + PATIENCE_MILLIS;
    Window.waitFor("the first stop", () -> first.isFocusControl() || System.currentTimeMillis() > end);
    return first.getDisplay().getFocusControl();
  }

  /** One press; what the focus comes to on the screen for the first time is looked at with and without it. */
  private Control step(Control from, boolean back, String way) {
    boolean first = isInside(from) && looked.add(from);
    if (first && from instanceof Canvas && !isStop(from)) {
      name(from);
    }
    ImageData with = first ? picture(from) : null;
    Control to = Keys.tab(from, back);
    if (to == from && !from.isDisposed()) {
      to = Keys.tab(from, back); // a key may be lost while the screen is drawn anew; a trap keeps the second too
    }
    if (to == from) {
      complain(way + " does not leave", from);
      return next(from);
    }
    if (first && !from.isDisposed() && from.isVisible() && same(with, picture(from))) {
      lookLonger(from, to);
    }
    return to;
  }

  private boolean isInside(Control control) {
    for (Control c = control; c != null; c = c.getParent()) {
      if (c == screen) {
        return true;
      }
    }
    return false;
  }

  /** Where a person who sits in a trap would have to click. */
  private Control next(Control trap) {
    List<Control> stops = stops();
    int at = stops.indexOf(trap);
    if (at < 0 || at + 1 >= stops.size()) {
      return null;
    }
    stops.get(at + 1).forceFocus();
    Keys.rest(SETTLE_MILLIS);
    return Display.getCurrent().getFocusControl();
  }

  /** A second look, slowly, before it is said that a focus cannot be seen; the focus goes where nothing is scrolled by it. */
  private void lookLonger(Control stop, Control after) {
    stop.forceFocus();
    Keys.rest(LONG_MILLIS);
    ImageData with = picture(stop);
    folder(stop).orElse(after).forceFocus();
    Keys.rest(LONG_MILLIS);
    if (!stop.isDisposed() && same(with, picture(stop))) {
      complain("the focus cannot be seen on", stop);
    }
    after.forceFocus();
    Keys.rest(SETTLE_MILLIS);
  }

  private static Optional<Control> folder(Control control) {
    return Stream.<Control>iterate(control.getParent(), c -> c != null, Control::getParent).filter(CTabFolder.class::isInstance).findFirst();
  }

  private static ImageData picture(Control control) {
    Keys.rest(SETTLE_MILLIS);
    Display display = control.getDisplay();
    Point at = control.toDisplay(0, 0);
    Rectangle area = new Rectangle(at.x - AROUND, at.y - AROUND, control.getSize().x + 2 * AROUND, control.getSize().y + 2 * AROUND).intersection(display.getBounds());
    if (area.isEmpty()) {
      return null;
    }
    Image image = new Image(display, area.width, area.height);
    GC gc = new GC(display);
    try {
      gc.copyArea(image, area.x, area.y);
      return image.getImageData();
    } finally {
      gc.dispose();
      image.dispose();
    }
  }

  private static boolean same(ImageData one, ImageData other) {
    return one == null || other == null || one.width == other.width && one.height == other.height && java.util.Arrays.equals(one.data, other.data);
  }

  private void name(Control control) {
    String name = SpokenName.of(control);
    if (name.isBlank()) {
      complain("no name is said for", control);
    } else if (name.matches("(?:[a-z]\\w*\\.)+\\w+|" + control.getClass().getSimpleName() + "\\b.*\\{.*") || name.equals(control.getClass().getSimpleName())) {
      complain("a word of the code is said (" + name + ") for", control);
    }
  }

  private void complain(String what, Control control) {
    String id = control.getData("id") == null ? "" : " [" + control.getData("id") + "]";
    complaints.add(where + ": " + what + " " + control.getClass().getSimpleName() + id + " “" + SpokenName.of(control) + "”");
  }

  /** What is wrong, each thing once. */
  static String told(List<String> complaints) {
    return complaints.size() + " in all\n" + String.join("\n", new ArrayList<>(new LinkedHashSet<>(complaints)));
  }
}
