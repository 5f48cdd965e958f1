package daubline.app;

import java.io.IOException;
import java.net.MalformedURLException;
import java.nio.file.Path;
import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.osgi.service.datalocation.Location;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.PlatformUI;

/**
 * Starts the workbench. Its own arguments are the folders of studies to open. What the window remembers between starts
 * lies in the user's folder for Daubline, never in a study.
 */
public final class WindowApplication implements IApplication {

  private static final int MOST_WINDOWS = 20;

  @Override
  public Object start(IApplicationContext context) throws IOException {
    Location place = claimMemory();
    Display display = PlatformUI.createDisplay();
    try {
      String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
      int code = PlatformUI.createAndRunWorkbench(display, new DaublineAdvisor(arguments));
      return code == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
    } finally {
      display.dispose();
      if (place != null) {
        place.release();
      }
    }
  }

  /** Claims the first place that no other running window holds, so that several can be open; null when it was given. */
  private static Location claimMemory() throws IOException {
    Location location = Platform.getInstanceLocation();
    if (location.isSet()) {
      return null;
    }
    for (int number = 1; number <= MOST_WINDOWS; number++) {
      if (location.set(memory(number), true)) {
        return location;
      }
    }
    throw new IOException("More than " + MOST_WINDOWS + " windows are open");
  }

  private static java.net.URL memory(int number) throws MalformedURLException {
    Path home = Path.of(System.getProperty("daubline.home", System.getProperty("user.home") + "/.daubline"));
    return home.resolve(number == 1 ? "window" : "window-" + number).toUri().toURL();
  }

  @Override
  public void stop() {
    if (PlatformUI.isWorkbenchRunning()) {
      IWorkbench workbench = PlatformUI.getWorkbench();
      workbench.getDisplay().syncExec(workbench::close);
    }
  }
}
