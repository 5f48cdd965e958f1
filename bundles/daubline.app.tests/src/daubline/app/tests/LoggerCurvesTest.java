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
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Listener;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Six hours of eight channels, a row a second, in one view. */
class LoggerCurvesTest {

  private static final int ROWS = 6 * 3600;
  private static final int CHANNELS = 8;
  private static final int SPIKE = 12_345;
  private static final int TRIES = 3;
  private static final int TURNS = 5;
  private static final int STEPS = 3;
  private static final long MOST_MILLIS = 200;
  private static final long PATIENCE_NANOS = 10_000_000_000L;

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
    String name = OpenStudy.nameOf(trial.getLoggers().get(before));
    Window.waitFor("the new file to be chosen", () -> Window.find("loggers.file", Combo.class).getText().equals(name));
    Window.idle(); // the message may be that of the file before
    Window.waitFor("the traces", () -> Window.find("loggersMessage", Label.class).getText().startsWith(Words.of("loggers.own")));
    return Window.find("loggers", Canvas.class);
  }

  private static byte[] picture(Canvas canvas) {
    painted(canvas, canvas::redraw);
    Image image = new Image(canvas.getDisplay(), canvas.getSize().x, canvas.getSize().y);
    GC gc = new GC(canvas);
    gc.copyArea(image, 0, 0);
    gc.dispose();
    ImageData data = image.getImageData();
    image.dispose();
    return data.data;
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

  /**
   * The view goes to and fro over six hours, a step a key, each step painted before the next. How long the steps take is printed, for
   * releng/benchmarks/measure panning; a stretch counts by the best of a few tries, as in BusyTest.
   */
  @Test
  void panningKeepsTheWindowFree() throws Exception {
    Trial trial = Window.firstTrial(Window.demonstration());
    Path file = sixHours(trial.getOn(), false);
    Watchdog taking = Watchdog.watch();
    Canvas canvas = taken(trial, file);
    System.out.println("busy on end, ms: page of loggers opened and six hours taken in " + taking.end());
    for (int i = 0; i < 3; i++) {
      Window.key(canvas, '+', '+');
    }
    List<Long> stretches = new ArrayList<>();
    List<Double> steps = new ArrayList<>();
    for (int i = 0; i < TRIES; i++) {
      Watchdog watchdog = Watchdog.watch();
      toAndFro(canvas, steps);
      stretches.add(watchdog.end());
    }
    Collections.sort(steps);
    System.out.println(String.format(Locale.ROOT, "panning 6 h × 8 channels × 1 Hz, %d × %d points: middle step %.1f ms, 95 %% %.1f ms, longest %.1f ms; on end %s ms",
        canvas.getSize().x, canvas.getSize().y, steps.get(steps.size() / 2), steps.get(steps.size() * 95 / 100), steps.getLast(), stretches));
    assertTrue(Collections.min(stretches) < MOST_MILLIS, "panning kept the window busy for " + stretches + " ms on end");
    Files.delete(file);
  }

  private static void toAndFro(Canvas canvas, List<Double> steps) {
    byte[] before = picture(canvas);
    for (int turn = 0; turn < 2 * TURNS; turn++) {
      int key = turn % 2 == 0 ? SWT.ARROW_RIGHT : SWT.ARROW_LEFT;
      for (int i = 0; i < STEPS; i++) {
        long start = System.nanoTime();
        painted(canvas, () -> Window.key(canvas, (char) 0, key));
        steps.add((System.nanoTime() - start) / 1e6);
      }
      byte[] after = picture(canvas);
      assertNotEquals(java.util.Arrays.hashCode(before), java.util.Arrays.hashCode(after), "the view has moved by " + key);
      before = after;
    }
  }

  /** Does something and waits until it is seen: the desktop paints in its own time. */
  private static void painted(Canvas canvas, Runnable change) {
    boolean[] seen = {false};
    Listener listener = e -> seen[0] = true;
    canvas.addListener(SWT.Paint, listener);
    change.run();
    long end = System.nanoTime() + PATIENCE_NANOS;
    while (!seen[0]) {
      assertTrue(System.nanoTime() < end, "nothing was painted");
      canvas.getDisplay().readAndDispatch();
    }
    canvas.removeListener(SWT.Paint, listener);
  }
}
