package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.model.Trial;
import daubline.ui.Words;
import daubline.ui.record.LoggersPage;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.study.OpenStudy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Six hours of eight channels, a row a second, are looked through with mouse and keys while the window stays awake. */
class LoggerPanTest {

  private static final int ROWS = 6 * 3600;
  private static final int CHANNELS = 8;
  private static final int SPIKE = 12_345;
  private static final long MOST_MILLIS = 200;
  private static final int MOVES = 60;

  @AfterEach
  void clear() {
    Window.clear();
  }

  /** A busy file: noise, an hour without rows, an open sensor, and in one second one value far above all others. */
  private static Path sixHours(String day, boolean spike) throws Exception {
    Path file = Files.createTempFile("six-hours", ".csv");
    Random noise = new Random(37);
    StringBuilder text = new StringBuilder("Time");
    for (int c = 1; c <= CHANNELS; c++) {
      text.append(",temperature ").append(c).append(" (°C)");
    }
    for (int i = 0; i < ROWS; i++) {
      int s = i < ROWS / 2 ? i : i + 3600;
      text.append(String.format(Locale.ROOT, "%n%s %02d:%02d:%02d", day, 9 + s / 3600, s / 60 % 60, s % 60));
      for (int c = 0; c < CHANNELS; c++) {
        String value = String.format(Locale.ROOT, "%.1f", 200 + 100 * c + noise.nextGaussian());
        text.append(',').append(c == 3 && i / 1000 == 5 ? "open" : c == 7 && spike && i == SPIKE ? "1400.0" : value);
      }
    }
    return Files.writeString(file, text);
  }

  private static Canvas taken(Trial trial, Path file) {
    SheetEditor editor = Window.sheet(trial);
    LoggersPage page = (LoggersPage) editor.show("record.loggers");
    int before = trial.getLoggers().size();
    Window.answer(Words.of("logger.title"), Words.of("logger.do"));
    page.take(file);
    Window.waitFor("the file", () -> trial.getLoggers().size() > before);
    Window.waitFor("the traces", () -> Window.find("loggersMessage", Label.class).getText().startsWith(Words.of("loggers.own")));
    return Window.find("loggers", Canvas.class);
  }

  /** A key as it comes from the keyboard. */
  private static void press(Canvas canvas, int code) {
    for (int type : new int[] {SWT.KeyDown, SWT.KeyUp}) {
      Event event = new Event();
      event.type = type;
      event.keyCode = code;
      canvas.getDisplay().post(event);
    }
    settle();
  }

  private static void mouse(int type, Point at, int button) {
    Event event = new Event();
    event.type = type;
    event.x = at.x;
    event.y = at.y;
    event.button = button;
    Display.getCurrent().post(event);
    settle();
  }

  /** What was posted comes back through the display server. */
  private static void settle() {
    long end = System.currentTimeMillis() + 25;
    Window.waitFor("the display", () -> System.currentTimeMillis() > end);
  }

  private static byte[] picture(Canvas canvas) {
    canvas.redraw();
    canvas.update();
    Image image = new Image(canvas.getDisplay(), canvas.getSize().x, canvas.getSize().y);
    GC gc = new GC(canvas);
    gc.copyArea(image, 0, 0);
    gc.dispose();
    ImageData data = image.getImageData();
    image.dispose();
    return data.data;
  }

  @Test
  void sixHoursAreLookedThroughWhileTheWindowStaysAwake() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial trial = Window.firstTrial(study);
    Path file = sixHours(trial.getOn(), true);
    Watchdog opening = Watchdog.watch();
    Window.sheet(trial).show("record.loggers");
    Window.pump();
    long opened = opening.end();
    Watchdog reading = Watchdog.watch();
    Canvas canvas = taken(trial, file);
    System.out.printf(Locale.ROOT, "The window was busy on end for at most: opening the page %d ms, taking the file in %d ms%n", opened, reading.end());
    Window.waitForResults(study);
    Watchdog watchdog = Watchdog.watch();
    int[] paints = {0};
    canvas.addListener(SWT.Paint, e -> paints[0]++);
    drag(canvas);
    int dragged = paints[0];
    assertTrue(dragged > MOVES / 2, "the curves follow the mouse: " + dragged + " drawings");
    walk(canvas);
    assertTrue(paints[0] > dragged + MOVES / 2, "the curves follow the keys: " + (paints[0] - dragged) + " drawings");
    long blocked = watchdog.end();
    System.out.printf(Locale.ROOT, "Looking through six hours: %d drawings, the window busy for at most %d ms on end%n", paints[0], blocked);
    assertTrue(blocked < MOST_MILLIS, "the window was busy for " + blocked + " ms on end");
    Files.delete(file);
  }

  private static void drag(Canvas canvas) {
    Point size = canvas.getSize();
    Point middle = canvas.toDisplay(size.x / 2, size.y / 2);
    mouse(SWT.MouseMove, middle, 0);
    mouse(SWT.MouseDown, middle, 1);
    mouse(SWT.MouseUp, middle, 1);
    assertTrue(canvas.isFocusControl() || Display.getCurrent().getFocusControl() == null, "a press brings the keys here");
    zoom(canvas);
    byte[] before = picture(canvas);
    mouse(SWT.MouseDown, middle, 1);
    for (int i = 1; i <= MOVES; i++) {
      mouse(SWT.MouseMove, new Point(middle.x - 4 * i, middle.y), 0);
    }
    mouse(SWT.MouseUp, new Point(middle.x - 4 * MOVES, middle.y), 1);
    assertTrue(!java.util.Arrays.equals(before, picture(canvas)), "dragging moves the curves");
  }

  private static void zoom(Canvas canvas) {
    for (int i = 0; i < 4; i++) {
      Window.key(canvas, '+', '+');
    }
  }

  private static void walk(Canvas canvas) {
    canvas.forceFocus();
    for (int i = 0; i < MOVES / 4; i++) {
      press(canvas, SWT.ARROW_RIGHT);
      press(canvas, SWT.ARROW_LEFT);
      press(canvas, SWT.PAGE_UP);
      press(canvas, SWT.PAGE_DOWN);
    }
    press(canvas, SWT.HOME);
  }

  /** The whole of six hours is in view, more than twenty rows in each column of points: the one second is still seen. */
  @Test
  void aPeakOfOneSecondIsSeenInAViewOfSixHours() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial trial = Window.firstTrial(study);
    Path with = sixHours(trial.getOn(), true);
    Path without = sixHours(trial.getOn(), false);
    byte[] seen = picture(taken(trial, with));
    byte[] plain = picture(taken(trial, without));
    assertEquals(seen.length, plain.length);
    assertNotEquals(java.util.Arrays.hashCode(plain), java.util.Arrays.hashCode(seen), "the peak is drawn");
    Files.delete(with);
    Files.delete(without);
  }
}
