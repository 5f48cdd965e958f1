package daubline.app.tests;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import org.eclipse.swt.widgets.Display;

/**
 * Watches how long the window's thread works on end: a heartbeat is queued again and again, and between two of them the
 * thread's own time is taken, so that other work on the machine does not count.
 */
final class Watchdog extends Thread {

  private static final long BEAT_MILLIS = 5;
  private static final long NANOS = 1_000_000;

  private final Display display = Display.getCurrent();
  private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
  private volatile boolean stopped;
  private long last;
  private long most;

  private Watchdog() {
    super("watchdog");
    setDaemon(true);
  }

  /** Begins to watch; called on the window's thread. */
  static Watchdog watch() {
    Watchdog watchdog = new Watchdog();
    watchdog.last = watchdog.threads.getCurrentThreadCpuTime();
    watchdog.start();
    return watchdog;
  }

  private void beat() {
    long now = threads.getCurrentThreadCpuTime();
    most = Math.max(most, now - last);
    last = now;
  }

  @Override
  public void run() {
    while (!stopped) {
      display.asyncExec(this::beat);
      try {
        Thread.sleep(BEAT_MILLIS);
      } catch (InterruptedException e) {
        return;
      }
    }
  }

  /** Ends; the longest stretch of work in milliseconds. */
  long end() {
    stopped = true;
    beat();
    return most / NANOS;
  }
}
