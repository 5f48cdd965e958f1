package daubline.ui.plan;

import daubline.base.Finding;
import daubline.engine.design.Progress;
import daubline.session.StudyException;
import daubline.session.StudyImage;
import daubline.session.StudySession;
import daubline.ui.study.Notices;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

/**
 * Long work on a picture of the study, with progress and cancel; the outcome is handed over on the window's thread.
 *
 * @param <T> the outcome
 */
final class PlanJob<T> extends Job {

  private static final int STEPS = 1000;

  /** The work. */
  @FunctionalInterface
  interface Work<T> {

    /** Does it. @throws IllegalArgumentException saying why there is no outcome */
    T on(StudySession copy, Progress progress);
  }

  private final StudyImage image;
  private final Work<T> work;
  private final Consumer<T> done;
  private final Consumer<String> refused;

  PlanJob(String name, StudyImage image, Work<T> work, Consumer<T> done, Consumer<String> refused) {
    super(name);
    this.image = image;
    this.work = work;
    this.done = done;
    this.refused = refused;
    setUser(true);
  }

  @Override
  protected IStatus run(IProgressMonitor monitor) {
    monitor.beginTask(getName(), STEPS);
    try (StudySession copy = image.read()) {
      T outcome = work.on(copy, new Watched(monitor));
      if (!monitor.isCanceled()) {
        Display.getDefault().asyncExec(() -> done.accept(outcome));
      }
      return monitor.isCanceled() ? Status.CANCEL_STATUS : Status.OK_STATUS;
    } catch (CancellationException e) {
      Display.getDefault().asyncExec(() -> refused.accept(""));
      return Status.CANCEL_STATUS;
    } catch (IllegalArgumentException e) {
      Display.getDefault().asyncExec(() -> refused.accept(String.valueOf(e.getMessage())));
      return Status.OK_STATUS;
    } catch (StudyException e) {
      Finding finding = e.finding();
      Display.getDefault().asyncExec(() -> Notices.show(finding));
      return Status.OK_STATUS;
    } finally {
      monitor.done();
    }
  }

  /** Passes progress on; searches run one after the other, each from 0 to 1, so that only growth counts. */
  private static final class Watched implements Progress {
    private final IProgressMonitor monitor;
    private int told;

    Watched(IProgressMonitor monitor) {
      this.monitor = monitor;
    }

    @Override
    public synchronized void done(double share) {
      int now = (int) (share * STEPS / 4);
      if (now > told) {
        monitor.worked(now - told);
        told = now;
      }
    }

    @Override
    public boolean cancelled() {
      return monitor.isCanceled();
    }
  }
}
