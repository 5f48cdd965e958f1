package daubline.ui.table;

import daubline.session.StudyException;
import daubline.session.merge.Merging;
import daubline.ui.Words;
import daubline.ui.look.Over;
import daubline.ui.study.BackupOpening;
import daubline.ui.study.Notices;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Studies;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Display;

/** Begins to merge another person's copy into an open study: it is read behind, then compared in a dialog. */
public final class MergingStart {

  private MergingStart() {
  }

  /** Asks what to do with a backup that was dropped: merge it, or open it as a study. Without an open study it is opened. */
  public static void dropped(Path backup) {
    Optional<OpenStudy> study = Studies.get().current();
    if (study.isEmpty()) {
      BackupOpening.open(backup);
      return;
    }
    MessageDialog question = new MessageDialog(Over.shell(), Words.of("merging.question.title"), null,
        Words.of("merging.question", backup.getFileName(), study.get().name()), MessageDialog.QUESTION, 0, Words.of("merging.question.merge"),
        Words.of("merging.question.open"), Words.of("import.cancel"));
    switch (question.open()) {
      case 0 -> start(study.get(), backup);
      case 1 -> BackupOpening.open(backup);
      default -> {
        // nothing is to be done
      }
    }
  }

  /** Compares a copy, a backup or a folder, with an open study and asks about what both changed. */
  public static void start(OpenStudy study, Path theirs) {
    Path mine = study.folder();
    Job.create(Words.of("merging.job", theirs.getFileName()), monitor -> {
      try {
        Merging merging = Merging.open(mine, theirs, Optional.empty());
        Display.getDefault().asyncExec(() -> ask(study, merging));
      } catch (StudyException e) {
        Display.getDefault().asyncExec(() -> Notices.show(e.finding()));
      }
      return Status.OK_STATUS;
    }).schedule();
  }

  private static void ask(OpenStudy study, Merging merging) {
    try (merging) {
      new MergingDialog(Over.shell(), study, merging).open();
    } catch (StudyException e) {
      Notices.show(e.finding());
    }
  }
}
