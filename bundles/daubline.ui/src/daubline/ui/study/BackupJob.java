package daubline.ui.study;

import daubline.base.Finding;
import daubline.session.StudyException;
import daubline.session.StudySession;
import daubline.session.backup.Backup;
import daubline.session.backup.RollingBackups;
import daubline.session.backup.Work;
import daubline.ui.Words;
import daubline.ui.prefs.BackupPage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;

/** Makes the dated backup of a study as it was saved, behind; nothing waits for it but the end of the window. */
public final class BackupJob extends Job {

  private static final Duration REST = Duration.ofMinutes(30);
  private static final Set<Path> COMPLAINED = new HashSet<>();

  private final Path folder;

  private BackupJob(Path folder) {
    super(Words.of("backup.job", folder.getFileName()));
    this.folder = folder;
    setPriority(DECORATE);
  }

  /** After a save: makes one when the last is older than half an hour. */
  static void afterSave(Path folder) {
    start(folder, REST);
  }

  /** After closing: makes one when the study changed since the last. */
  static void afterClose(Path folder) {
    start(folder, Duration.ZERO);
  }

  private static void start(Path folder, Duration rest) {
    try {
      List<Backup> all = RollingBackups.of(folder);
      boolean rests = !all.isEmpty() && all.get(all.size() - 1).at().plus(rest).isAfter(LocalDateTime.now());
      if (BackupPage.isOn() && Files.isWritable(folder) && !rests) {
        new BackupJob(folder).schedule();
      }
    } catch (StudyException e) {
      Platform.getLog(BackupJob.class).warn(e.getMessage(), e);
    }
  }

  /** Lets the backups that run come to their end, with a way to stop them. */
  static void finish() {
    if (Job.getJobManager().find(BackupJob.class).length > 0) {
      try {
        PlatformUI.getWorkbench().getProgressService().busyCursorWhile(monitor -> Job.getJobManager().join(BackupJob.class, monitor));
      } catch (java.lang.reflect.InvocationTargetException | InterruptedException e) {
        Job.getJobManager().cancel(BackupJob.class);
      }
    }
  }

  @Override
  public boolean belongsTo(Object family) {
    return family == BackupJob.class;
  }

  @Override
  protected IStatus run(IProgressMonitor monitor) {
    Work work = (what, done, all) -> !monitor.isCanceled();
    try (StudySession saved = StudySession.read(folder)) {
      RollingBackups.roll(saved.image(), BackupPage.rule(), BackupPage.isWhole(), LocalDateTime.now().truncatedTo(ChronoUnit.SECONDS), work);
      return Status.OK_STATUS;
    } catch (CancellationException e) {
      return Status.CANCEL_STATUS;
    } catch (StudyException e) {
      complain(e.finding());
      return Status.OK_STATUS;
    }
  }

  /** Says once for each study that its backups fail; a message at every save would teach to press it away. */
  private void complain(Finding finding) {
    Platform.getLog(BackupJob.class).warn(finding.toString());
    Display.getDefault().asyncExec(() -> {
      if (COMPLAINED.add(folder) && PlatformUI.isWorkbenchRunning() && !PlatformUI.getWorkbench().isClosing()) {
        Notices.show(finding);
      }
    });
  }
}
