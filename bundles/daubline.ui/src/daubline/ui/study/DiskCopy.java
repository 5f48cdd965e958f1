package daubline.ui.study;

import daubline.session.StudyException;
import daubline.session.StudyImage;
import daubline.session.backup.Backup;
import daubline.session.backup.BackupReader;
import daubline.session.backup.BackupWriter;
import daubline.ui.Words;
import daubline.ui.look.Over;
import daubline.ui.prefs.Preferred;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Display;

/** Copies a study as it stands, unsaved changes included, as one dated file to another disk, and compares what was written. */
public final class DiskCopy extends Job {

  private static final String LAST = "disk";
  private static final int STEPS = 1000;

  private final StudyImage image;
  private final Path folder;

  private DiskCopy(OpenStudy study, Path folder) {
    super(Words.of("disk.job", study.name()));
    this.image = study.session().image();
    this.folder = folder;
    setUser(true);
  }

  /** Copies a study into a folder, with progress and a way to stop it, and remembers the folder. */
  public static void start(OpenStudy study, Path folder) {
    Preferred.put(LAST, folder.toString());
    new DiskCopy(study, folder).schedule();
  }

  /** The folder of the last copy. */
  public static Optional<Path> last() {
    return Optional.of(Preferred.node().get(LAST, "")).filter(f -> !f.isEmpty()).map(Path::of);
  }

  @Override
  protected IStatus run(IProgressMonitor monitor) {
    SubMonitor steps = SubMonitor.convert(monitor, STEPS);
    int[] told = new int[1];
    try {
      Backup made = BackupWriter.copy(image, folder, LocalDateTime.now().truncatedTo(ChronoUnit.SECONDS), (what, done, all) -> {
        int now = all == 0 ? 0 : (int) (STEPS * done / all);
        steps.worked(now - told[0]);
        told[0] = now;
        monitor.subTask(what);
        return !monitor.isCanceled();
      });
      Display.getDefault().asyncExec(() -> say(made));
      return Status.OK_STATUS;
    } catch (CancellationException e) {
      return Status.CANCEL_STATUS;
    } catch (StudyException e) {
      Display.getDefault().asyncExec(() -> Notices.show(e.finding()));
      return Status.OK_STATUS;
    }
  }

  private static void say(Backup made) {
    try (BackupReader reader = BackupReader.open(made.file())) {
      String kilobytes = Preferred.number(Math.ceil(Files.size(made.file()) / 1024.0));
      MessageDialog.openInformation(Over.shell(), Words.of("disk.title"),
          Words.of("disk.done", made.file(), reader.files(), kilobytes));
    } catch (StudyException e) {
      Notices.show(e.finding());
    } catch (java.io.IOException e) {
      Notices.show(Words.of("disk.title"), String.valueOf(e));
    }
  }
}
