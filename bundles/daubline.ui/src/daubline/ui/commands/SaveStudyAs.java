package daubline.ui.commands;

import daubline.session.StudyException;
import daubline.session.backup.Bases;
import daubline.ui.Words;
import daubline.ui.look.Over;
import daubline.ui.study.Notices;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Start;
import java.nio.file.Path;
import java.time.LocalDateTime;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;

/** Saves a complete copy of the current study under another name and goes on with the copy. */
public final class SaveStudyAs extends StudyHandler {

  @Override
  void run(OpenStudy study) {
    FileDialog dialog = new FileDialog(Over.shell(), SWT.SAVE);
    dialog.setText(Words.of("saveas.title"));
    dialog.setFilterPath(String.valueOf(study.folder().getParent()));
    dialog.setFileName(study.folder().getFileName() + "-2");
    String chosen = dialog.open();
    if (chosen != null) {
      saveAs(study, Path.of(chosen));
    }
  }

  /** Saves a copy in a folder and opens it. */
  static void saveAs(OpenStudy study, Path folder) {
    try {
      Bases.note(study.session().image(), LocalDateTime.now());
      study.session().saveCopy(folder);
      Start.open(() -> folder);
    } catch (StudyException e) {
      Notices.show(e.finding());
    }
  }
}
