package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Text;
import org.eclipse.nebula.widgets.nattable.NatTable;

/**
 * Presses keys as a keyboard does: the event goes to the display, which gives it to whatever has the focus. The toolkit takes any character
 * of Latin-1, with ±, °, ×, ² and umlauts, under its own number, and others under the number of their key symbol, here those that stand in
 * values and remarks.
 */
final class Keys {

  /** After which a focus that did not go on is taken to be kept. */
  private static final long PATIENCE_MILLIS = 3000;
  private static final long REST_MILLIS = 250;
  /** Numbers of key symbols (keysymdef.h of the X Window System) by the character they write. */
  private static final Map<Character, Character> SYMBOLS = Map.of('≥', (char) 0x8bd, '≤', (char) 0x8bc, '–', (char) 0xaaa, '—', (char) 0xaa9, '‘', (char) 0xad0,
      '’', (char) 0xad1, '“', (char) 0xad2, '”', (char) 0xad3, '„', (char) 0xafe, '…', (char) 0xaae);
  private static final char LAST_OF_ASCII = '~';
  private static final String SHIFTED = "~!@#$%^&*()_+{}|:\"<>?";

  /** The character that is pressed although the keyboard has no key for it; then the toolkit tells the number of the key symbol in its place. */
  private static char lacking;

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

  /** Presses a key while another, such as Ctrl, is held down, and waits until what it does is done. */
  static void chord(int held, char character) {
    together(held, character, character);
  }

  /** Presses any key while another, such as Shift, is held down, and waits until what it does is done. */
  static void together(int held, int keyCode, char character) {
    send(SWT.KeyDown, held, (char) 0);
    send(SWT.KeyDown, keyCode, character);
    send(SWT.KeyUp, keyCode, character);
    send(SWT.KeyUp, held, (char) 0);
    rest(REST_MILLIS);
  }

  /** Presses and lets go a key that writes a character. */
  private static void stroke(char character) {
    post(SWT.KeyDown, character, character);
    post(SWT.KeyUp, character, character);
  }

  /** Does something with keys that come as from a keyboard: the toolkit posts them as if a button of the mouse were held down. */
  static void plainly(Runnable work) {
    Display display = Display.getCurrent();
    Listener plain = e -> {
      e.stateMask &= ~SWT.BUTTON_MASK;
      if (lacking != 0 && e.type == SWT.KeyDown) {
        e.character = lacking;
      }
    };
    IntStream.of(SWT.KeyDown, SWT.KeyUp, SWT.Traverse).forEach(type -> display.addFilter(type, plain));
    try {
      work.run();
    } finally {
      IntStream.of(SWT.KeyDown, SWT.KeyUp, SWT.Traverse).forEach(type -> display.removeFilter(type, plain));
    }
  }

  /** Presses the keys of a text and Enter; an empty one is Enter alone. Each key waits until the one before has arrived. */
  static void write(NatTable grid, String text) {
    for (int i = 0; i < text.length(); i++) {
      stroke(text.charAt(i));
      String so = text.substring(0, i + 1);
      until("“" + so + "” of “" + text + "”", () -> so.equals(open(grid)));
    }
    stroke(SWT.CR);
    until("the cell “" + text + "” closed", () -> grid.getActiveCellEditor() == null || grid.getActiveCellEditor().isClosed());
  }

  /** What stands in the open cell; empty when none is open. */
  private static String open(NatTable grid) {
    if (grid.getActiveCellEditor() == null || grid.getActiveCellEditor().isClosed()) {
      return "";
    }
    Control editor = grid.getActiveCellEditor().getEditorControl();
    Text field = editor instanceof Text t ? t : (Text) Window.all((Composite) editor).stream().filter(Text.class::isInstance).findFirst().orElseThrow();
    return field.getText();
  }

  /** Which shell and control have the keyboard, and what lies under the pointer: without a window manager it may take the keys. */
  private static String whereKeysGo() {
    Display display = Display.getCurrent();
    return "keyboard at " + display.getFocusControl() + " in " + display.getActiveShell() + ", pointer " + display.getCursorLocation() + " on " + display.getCursorControl() + ", shells "
        + java.util.Arrays.stream(display.getShells()).map(s -> s + (s.isVisible() ? " seen " + s.getBounds() : " hidden")).toList();
  }

  private static void until(String what, BooleanSupplier arrived) {
    long end = System.currentTimeMillis() + PATIENCE_MILLIS;
    while (!arrived.getAsBoolean()) {
      assertTrue(System.currentTimeMillis() < end, () -> "waited in vain for " + what + "; " + whereKeysGo());
      if (!Display.getCurrent().readAndDispatch()) {
        Thread.onSpinWait();
      }
    }
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

  /** A person types a text into whatever has the keyboard, capital letters and the like with Shift held. */
  static void text(String text) {
    text.chars().forEach(c -> character((char) c));
  }

  private static void character(char c) {
    Person.touch(() -> lacking = c > LAST_OF_ASCII ? c : 0);
    boolean shift = c >= 'A' && c <= 'Z' || SHIFTED.indexOf(c) >= 0;
    chord(shift ? SWT.SHIFT : 0, c, SYMBOLS.getOrDefault(c, c));
    Person.touch(() -> lacking = 0);
  }

  /** A person presses a key such as an arrow or Enter. */
  static void tap(int key) {
    chord(0, key, key == SWT.CR || key == SWT.ESC || key == SWT.TAB || key == SWT.DEL ? (char) key : 0);
  }

  /** A person presses a letter while Ctrl, Alt or Shift is held; 0 for none. */
  static void chord(int modifier, int key, char character) {
    Person.touch(() -> {
      if (modifier != 0) {
        must(SWT.KeyDown, modifier, (char) 0);
      }
    });
    // each is given out before the next comes, as the focus may have gone elsewhere
    Person.touch(() -> must(SWT.KeyDown, key, character));
    Person.touch(() -> must(SWT.KeyUp, key, character));
    Person.touch(() -> {
      if (modifier != 0) {
        must(SWT.KeyUp, modifier, (char) 0);
      }
    });
  }

  private static void must(int type, int key, char character) {
    assertTrue(post(type, key, character), "no window has the keyboard");
  }

  /** A person fills cells of a table one after the other, each ended by Enter; an empty text is Enter alone. */
  static void cells(NatTable grid, String... texts) {
    for (String text : texts) {
      for (int i = 0; i < text.length(); i++) {
        String so = text.substring(0, i + 1);
        character(text.charAt(i));
        Person.await("“" + so + "” of “" + text + "”", () -> so.equals(open(grid)));
      }
      tap(SWT.CR);
      Person.await("the cell “" + text + "” closed", () -> grid.isDisposed() || grid.getActiveCellEditor() == null || grid.getActiveCellEditor().isClosed());
    }
  }

  private static void send(int type, int keyCode, char character) {
    post(type, keyCode, character);
    Window.pump();
  }

  private static boolean post(int type, int keyCode, char character) {
    Event event = new Event();
    event.type = type;
    event.keyCode = keyCode;
    event.character = character;
    return Display.getCurrent().post(event);
  }
}
