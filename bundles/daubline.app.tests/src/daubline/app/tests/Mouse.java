package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.Supplier;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/** Moves the pointer and presses its button as a hand does: on what is seen, where it is seen. */
final class Mouse {

  /** Whether the button is held down. */
  private static boolean held;

  private Mouse() {
  }

  /** Does something with buttons that are pressed where the pointer is: the toolkit posts them without saying where on the screen. */
  static void truly(Runnable work) {
    Display display = Display.getCurrent();
    Listener there = e -> {
      Point at = ((Control) e.widget).toControl(display.getCursorLocation());
      e.x = at.x;
      e.y = at.y;
    };
    Listener drawn = e -> e.stateMask |= held ? SWT.BUTTON1 : 0;
    display.addFilter(SWT.MouseDown, there);
    display.addFilter(SWT.MouseUp, there);
    display.addFilter(SWT.MouseMove, drawn);
    try {
      work.run();
    } finally {
      display.removeFilter(SWT.MouseDown, there);
      display.removeFilter(SWT.MouseUp, there);
      display.removeFilter(SWT.MouseMove, drawn);
    }
  }

  /** Clicks in the middle of a control, which has to be seen, enabled and not covered. */
  static void click(Supplier<? extends Control> look) {
    Control control = Person.see(look);
    Person.await("a chance to click " + control, () -> control.isVisible() && control.isEnabled() && control.getSize().x > 0);
    click(control, () -> new Point(control.getSize().x / 2, control.getSize().y / 2));
  }

  /** Clicks at a point of a control. */
  static void click(Control control, Supplier<Point> where) {
    move(control, where);
    press();
  }

  /** Clicks a cell of a table by its column and row, headings not counted; it has to be in sight. */
  static void cell(NatTable table, int column, int row) {
    Person.await("the cell " + column + ", " + row, () -> middle(table, column, row) != null);
    click(table, () -> middle(table, column, row));
  }

  private static Point middle(NatTable table, int column, int row) {
    for (int p = 1; p < table.getRowCount(); p++) {
      for (int c = 0; c < table.getColumnCount() && table.getRowIndexByPosition(p) == row; c++) {
        Rectangle cell = table.getColumnIndexByPosition(c) == column ? table.getBoundsByPosition(c, p).intersection(table.getClientArea()) : new Rectangle(0, 0, 0, 0);
        if (!cell.isEmpty()) {
          return new Point(cell.x + cell.width / 2, cell.y + cell.height / 2);
        }
      }
    }
    return null;
  }

  /** Presses at one point of a control, draws to another and lets go. */
  static void drag(Control control, Point from, Point to) {
    move(control, () -> from);
    button(SWT.MouseDown);
    move(control, () -> to);
    button(SWT.MouseUp);
  }

  private static void move(Control control, Supplier<Point> where) {
    Person.touch(() -> {
      Point at = control.toDisplay(where.get());
      Event event = new Event();
      event.type = SWT.MouseMove;
      event.x = at.x;
      event.y = at.y;
      Display.getCurrent().post(event);
    });
    Person.await("the pointer over " + control, () -> isOver(control));
  }

  /** Whether the middle of a control is not scrolled away. */
  static boolean isInSight(Control control) {
    Point size = control.getSize();
    for (Composite parent = control.getParent(); parent != null; parent = parent.getParent()) {
      if (!parent.getClientArea().contains(parent.toControl(control.toDisplay(size.x / 2, size.y / 2)))) {
        return false;
      }
    }
    return true;
  }

  /** Whether the pointer is over a control or what lies in it; not when something covers it. */
  private static boolean isOver(Control control) {
    Control under = Display.getCurrent().getCursorControl();
    for (Control c = under; c != null; c = c.getParent()) {
      if (c == control) {
        return true;
      }
    }
    return false;
  }

  /** Both at once, as a quick finger does: a button that stays down begins to draw what it is on. */
  private static void press() {
    Person.touch(() -> {
      post(SWT.MouseDown);
      post(SWT.MouseUp);
    });
    Person.rest();
  }

  private static void button(int type) {
    Person.touch(() -> {
      held = type == SWT.MouseDown;
      post(type);
    });
    Person.rest();
  }

  private static void post(int type) {
    Event event = new Event();
    event.type = type;
    event.button = 1;
    assertTrue(Display.getCurrent().post(event), "no window under the pointer");
  }
}
