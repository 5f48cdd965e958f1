package daubline.ui.study;

import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

/**
 * Reckons something behind and hands it to the window's thread; where another was begun meanwhile, the older is dropped.
 *
 * @param <T> what is reckoned
 */
public final class Behind<T> extends Job {

  private final Consumer<T> taker;
  private volatile Supplier<T> work;

  /**
   * Nothing to do yet.
   *
   * @param name what it does, in the words of the window
   * @param taker takes the result on the window's thread
   */
  public Behind(String name, Consumer<T> taker) {
    super(name);
    this.taker = taker;
    setSystem(true);
    setPriority(SHORT);
  }

  /** Begins; the work must touch nothing that belongs to the window's thread, the model of an open study included. */
  public void begin(Supplier<T> now) {
    work = now;
    cancel();
    schedule();
  }

  @Override
  protected IStatus run(IProgressMonitor monitor) {
    Supplier<T> now = work;
    T result = now.get();
    Display display = Display.getDefault();
    if (!display.isDisposed()) {
      display.asyncExec(() -> {
        if (now == work) {
          taker.accept(result);
        }
      });
    }
    return Status.OK_STATUS;
  }
}
