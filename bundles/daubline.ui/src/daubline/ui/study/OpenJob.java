package daubline.ui.study;

import daubline.session.Recovery;
import daubline.session.StudyException;
import daubline.session.StudySession;
import daubline.ui.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

/** Opens a study behind; asks first when an earlier session left unsaved changes. */
final class OpenJob extends Job {

  private final Callable<Path> place;
  private final Runnable afterwards;

  OpenJob(Callable<Path> place, Runnable afterwards) {
    super(Words.of("job.open"));
    this.place = place;
    this.afterwards = afterwards;
    setPriority(INTERACTIVE);
  }

  @Override
  protected IStatus run(IProgressMonitor monitor) {
    try {
      Path folder = place.call();
      if (!isOpen(folder)) {
        open(folder).ifPresent(session -> Display.getDefault().syncExec(() -> Studies.get().add(session)));
      }
      Display.getDefault().asyncExec(afterwards);
    } catch (StudyException e) {
      Display.getDefault().asyncExec(() -> Notices.show(e.finding()));
    } catch (IOException e) {
      Display.getDefault().asyncExec(() -> Notices.show(Words.of("open.failed"), String.valueOf(e)));
    } catch (Exception e) {
      return Status.error(Words.of("open.failed"), e);
    }
    return Status.OK_STATUS;
  }

  private static boolean isOpen(Path folder) {
    boolean[] open = new boolean[1];
    Display.getDefault().syncExec(() -> Studies.get().find(folder).ifPresent(study -> {
      Studies.get().setCurrent(study);
      open[0] = true;
    }));
    return open[0];
  }

  private static Optional<StudySession> open(Path folder) throws StudyException {
    Optional<Recovery> recovery = Recovery.of(folder);
    if (recovery.isEmpty()) {
      return Optional.of(StudySession.open(folder));
    }
    String summary = String.join("\n", recovery.get().summary());
    RecoveryQuestion.Answer[] answer = new RecoveryQuestion.Answer[1];
    Display.getDefault().syncExec(() -> answer[0] = RecoveryQuestion.ask(folder, recovery.get().time(), summary));
    return switch (answer[0]) {
      case RECOVER -> Optional.of(StudySession.open(recovery.get()));
      case AS_SAVED -> Optional.of(StudySession.open(folder));
      case NOT_NOW -> Optional.empty();
    };
  }
}
