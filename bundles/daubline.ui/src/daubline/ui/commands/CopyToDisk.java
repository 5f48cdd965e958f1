package daubline.ui.commands;

import daubline.ui.Words;
import daubline.ui.look.Over;
import daubline.ui.study.DiskCopy;
import daubline.ui.study.OpenStudy;
import java.nio.file.Path;
import org.eclipse.swt.widgets.DirectoryDialog;

/** Copies the current study to a disk that the person chooses, and reads it back. */
public final class CopyToDisk extends StudyHandler {

  @Override
  void run(OpenStudy study) {
    DirectoryDialog dialog = new DirectoryDialog(Over.shell());
    dialog.setText(Words.of("disk.title"));
    dialog.setMessage(Words.of("disk.choose"));
    DiskCopy.last().ifPresent(f -> dialog.setFilterPath(f.toString()));
    String chosen = dialog.open();
    if (chosen != null) {
      DiskCopy.start(study, Path.of(chosen));
    }
  }
}
