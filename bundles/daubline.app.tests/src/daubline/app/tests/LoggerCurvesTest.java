package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import daubline.model.Trial;
import daubline.ui.Words;
import daubline.ui.record.LoggersPage;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.study.OpenStudy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Six hours of eight channels, a row a second, in one view. */
class LoggerCurvesTest {

  private static final int ROWS = 6 * 3600;
  private static final int CHANNELS = 8;
  private static final int SPIKE = 12_345;

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
