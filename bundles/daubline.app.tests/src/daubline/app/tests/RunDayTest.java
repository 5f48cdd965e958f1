package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.model.Charge;
import daubline.model.LogEntry;
import daubline.model.Trial;
import daubline.ui.Parts;
import daubline.ui.Words;
import daubline.ui.look.Hue;
import daubline.ui.runday.RunDayView;
import daubline.ui.study.OpenStudy;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The day of the fire by single keys, and its clock read from afar. */
class RunDayTest {

  /** A small laptop: 1366 by 768 points on a screen of 14 inches across. */
  private static final int WIDTH = 1366;
  private static final int HEIGHT = 768;
  private static final double POINT_MILLIMETRES = 14 * 25.4 / Math.hypot(WIDTH, HEIGHT);
  private static final double DISTANCE_MILLIMETRES = 5000;
  /** ISO 9241-303:2011, 5.5.4: characters at least 16 minutes of arc high, 20 to 22 preferred (from memory). */
  private static final double LEAST_MINUTES = 16;

  private Shell clock;

  @AfterEach
  void clear() {
    if (clock != null && !clock.isDisposed()) {
      clock.close();
    }
    Window.clear();
  }

  /** Presses a key of the day, and Enter as often as its fields want. */
  private static void press(char key, int fields) {
    Window.key(Window.find("run.keys", Canvas.class), key, key);
    for (int i = 0; i < fields; i++) {
      Control field = Display.getCurrent().getFocusControl();
      Window.key(field, SWT.CR, SWT.CR);
    }
  }

  private static Trial lit(OpenStudy study) throws Exception {
    Trial trial = study.session().study().getSeries().get(0).getTrials().get(0);
    study.edit("change.field", "log", () -> trial.getLog().clear());
    RunDayView view = Window.view(Parts.RUN_DAY, RunDayView.class);
    view.begin(trial);
    Window.waitFor("the keyboard in Run Day", () -> {
      Window.front();
      view.setFocus();
      return Display.getCurrent().getFocusControl() != null;
    });
    press('H', 1);
    return trial;
  }

  @Test
  void everyKeyStampsItsTime() throws Exception {
    Trial trial = lit(Window.demonstration());
    assertEquals("phase", trial.getLog().get(0).getKind());
    press('C', 1);
    Charge charge = assertInstanceOf(Charge.class, trial.getLog().get(1));
    assertTrue(Math.abs(ChronoUnit.SECONDS.between(OffsetDateTime.parse(charge.getAt()), OffsetDateTime.now())) < 300, charge.getAt());
  }

  /** Five hours into the run, when the figures are widest. */
  @Test
  void theClockIsReadAtFiveMetres() throws Exception {
    OpenStudy study = Window.demonstration();
    LogEntry lit = lit(study).getLog().get(0);
    study.edit("change.field", "at", () -> lit.setAt(OffsetDateTime.now().minusHours(5).minusMinutes(23).truncatedTo(ChronoUnit.SECONDS).toString()));
    press('C', 1);
    Window.find("run.window", Button.class).notifyListeners(SWT.Selection, new Event());
    clock = Arrays.stream(Display.getCurrent().getShells()).filter(s -> s.getText().equals(Words.of("run.window.title"))).findFirst().orElseThrow();
    clock.setBounds(0, 0, WIDTH, HEIGHT);
    Window.pump();
    Canvas face = (Canvas) clock.getChildren()[0];
    Window.waitFor("the size", () -> face.getSize().x > WIDTH * 9 / 10 && face.getSize().x <= WIDTH && face.getSize().y <= HEIGHT);
    int points = firstLineOfInk(picture(face));
    double minutes = 60 * Math.toDegrees(Math.atan(points * POINT_MILLIMETRES / DISTANCE_MILLIMETRES));
    System.out.printf("digits of the clock on %s: %d points, %.1f minutes of arc at 5 m%n", face.getSize(), points, minutes);
    assertTrue(minutes >= LEAST_MINUTES, "digits are only " + minutes + " minutes of arc high");
  }

  private static ImageData picture(Canvas canvas) {
    canvas.redraw();
    canvas.update();
    Image image = new Image(canvas.getDisplay(), canvas.getSize().x, canvas.getSize().y);
    GC gc = new GC(canvas);
    gc.copyArea(image, 0, 0);
    gc.dispose();
    ImageData data = image.getImageData();
    image.dispose();
    return data;
  }

  /** The height of the topmost line of writing in the left half, in points. */
  private static int firstLineOfInk(ImageData data) {
    int top = 0;
    while (!hasInk(data, top)) {
      top++;
    }
    int bottom = top;
    while (bottom < data.height && hasInk(data, bottom)) {
      bottom++;
    }
    return bottom - top;
  }

  /** Whether a row, frame of the focus left out, holds something darker or lighter than halfway from paper to ink. */
  private static boolean hasInk(ImageData data, int y) {
    RGB ink = Hue.INK.color().getRGB();
    RGB paper = Hue.PAPER.color().getRGB();
    for (int x = 8; x < data.width / 2; x++) {
      RGB here = data.palette.getRGB(data.getPixel(x, y));
      if (Math.abs(here.red - ink.red) < Math.abs(here.red - paper.red) && y > 6) {
        return true;
      }
    }
    return false;
  }
}
