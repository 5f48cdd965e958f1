package daubline.app.tests;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.nebula.widgets.nattable.NatTable;

/** Presses keys as a keyboard does: the event goes to the display, which gives it to whatever has the focus. */
final class Keys {

  /** After which a focus that did not go on is taken to be kept. */
  private static final long PATIENCE_MILLIS = 3000;
  private static final long REST_MILLIS = 250;

  private Keys() {
  }

  /** Goes on by Tab, or out of what keeps Tab for itself by Ctrl+Tab; says where the focus is then. */
  static Control tab(Control from, boolean back) {
    boolean keepsTab = from instanceof NatTable || from instanceof StyledText || from instanceof Text t && (t.getStyle() & SWT.MULTI) != 0;
    hold(SWT.CTRL, keepsTab, SWT.KeyDown);
    hold(SWT.SHIFT, back, SWT.KeyDown);
    send(SWT.KeyDown, SWT.TAB, SWT.TAB);
    send(SWT.KeyUp, SWT.TAB, SWT.TAB);
    hold(SWT.SHIFT, back, SWT.KeyUp);
    hold(SWT.CTRL, keepsTab, SWT.KeyUp);
    long end = System.currentTimeMillis() + PATIENCE_MILLIS;
    Display display = Display.getCurrent();
    Window.waitFor("the focus to go on", () -> display.getFocusControl() != from && display.getFocusControl() != null || System.currentTimeMillis() > end);
    return display.getFocusControl();
  }

  /** Presses and lets go a key. */
  static void press(int keyCode, char character) {
    send(SWT.KeyDown, keyCode, character);
    send(SWT.KeyUp, keyCode, character);
    rest(REST_MILLIS);
  }

  /** Lets the window do what it has to for a while. */
  static void rest(long millis) {
    long end = System.currentTimeMillis() + millis;
    Window.waitFor("a moment", () -> System.currentTimeMillis() > end);
  }

  private static void hold(int key, boolean wanted, int type) {
    if (wanted) {
      send(type, key, (char) 0);
    }
  }

  private static void send(int type, int keyCode, char character) {
    Event event = new Event();
    event.type = type;
    event.keyCode = keyCode;
    event.character = character;
    Display.getCurrent().post(event);
    Window.pump();
  }
}
