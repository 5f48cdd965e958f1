package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;

/**
 * A person at the window, who looks, presses keys and clicks. What a person does runs beside the window's own thread, so that a dialog
 * that waits for its answer can be answered, whoever opened it.
 */
final class Person {

  private static final long PATIENCE_MILLIS = 60_000;
  private static final long REST_MILLIS = 15;

  private Person() {
  }

  /** What a person does, in order. */
  interface Script {
    void act() throws Exception;
  }

  /**
   * Lets a person act in the cleared window until all is done; the window works meanwhile. When a wait was in vain, a picture of the window is
   * kept and what is still open is closed.
   */
  static void acts(Script script) throws Exception {
    Display display = Display.getCurrent();
    FutureTask<Void> work = new FutureTask<Void>(() -> {
      try {
        script.act();
      } catch (Exception | AssertionError e) {
        see(Person::picture);
        display.asyncExec(Person::closeDialogs);
        throw e;
      }
      return null;
    }) {
      @Override
      protected void done() {
        display.wake();
      }
    };
    Window.clear();
    Window.front();
    Thread person = new Thread(work, "person");
    Mouse.truly(() -> Keys.plainly(() -> {
      person.start();
      while (!work.isDone()) {
        if (!display.readAndDispatch()) {
          display.sleep();
        }
      }
    }));
    finish(work);
  }

  private static <T> T finish(FutureTask<T> work) {
    try {
      return work.get();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof Error error) {
        throw error;
      }
      throw new IllegalStateException(e.getCause());
    }
  }

  /** What is seen in the window now. */
  static <T> T see(Supplier<T> look) {
    FutureTask<T> work = new FutureTask<>(look::get);
    Display.getDefault().syncExec(work);
    return finish(work);
  }

  /** Does something with the window's own thread. */
  static void touch(Runnable act) {
    see(() -> {
      act.run();
      return null;
    });
  }

  /** Waits until something is to be seen in the window; a look that fails is a look too early. */
  static void await(String what, BooleanSupplier there) {
    long end = System.currentTimeMillis() + PATIENCE_MILLIS;
    Throwable last = null;
    do {
      try {
        if (see(there::getAsBoolean)) {
          return;
        }
      } catch (AssertionError | RuntimeException e) {
        last = e;
      }
      rest();
    } while (System.currentTimeMillis() < end);
    throw new AssertionError("waited in vain for " + what, last);
  }

  /** A breath between two looks. */
  static void rest() {
    rest(REST_MILLIS);
  }

  static void rest(long millis) {
    try {
      Thread.sleep(millis);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Waits for a dialog with a title until it has the keyboard. */
  static Shell dialog(String title) {
    Supplier<Shell> look = () -> Arrays.stream(Display.getCurrent().getShells()).filter(s -> s.isVisible() && s.getText().equals(title)).findFirst().orElse(null);
    await("the dialog " + title, () -> look.get() != null);
    await("the keyboard in the dialog " + title, () -> look.get() == Display.getCurrent().getActiveShell());
    return see(look);
  }

  /** Waits until a dialog is gone. */
  static void gone(Shell dialog) {
    await("the end of a dialog", () -> dialog.isDisposed() || !dialog.isVisible());
  }

  private static void closeDialogs() {
    for (Shell shell : Display.getCurrent().getShells()) {
      if (shell != Window.shell() && shell.isVisible()) {
        shell.close();
      }
    }
  }

  /** Keeps what the screen shows beside the studies of the tests. */
  private static Void picture() {
    Display display = Display.getCurrent();
    Image image = new Image(display, display.getBounds().width, display.getBounds().height);
    GC gc = new GC(display);
    gc.copyArea(image, 0, 0);
    gc.dispose();
    ImageLoader loader = new ImageLoader();
    loader.data = new ImageData[] {image.getImageData()};
    image.dispose();
    Path file = Path.of(System.getProperty("daubline.studies", ".")).toAbsolutePath().resolveSibling("in-vain-" + System.currentTimeMillis() + ".png");
    loader.save(file.toString(), SWT.IMAGE_PNG);
    System.err.println("the window, when a person waited in vain: " + file);
    return null;
  }

  /** Asserts something that is seen in the window. */
  static void sees(String what, BooleanSupplier there) {
    assertTrue(see(there::getAsBoolean), what);
  }
}
