package daubline.ui.commands;

import daubline.ui.Words;
import daubline.ui.look.Over;
import daubline.ui.study.DiskCopy;
import daubline.ui.study.OpenStudy;
import daubline.ui.table.MergingStart;
import java.nio.file.Path;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;

/** Puts another person's copy of the current study, a backup or a folder's study.xmi, into it. */
public final class MergeCopy extends StudyHandler {

  /** Shows run and evidence, so not while somebody records blind. */
  @Override
  boolean can(OpenStudy study) {
    return study.blind().isEmpty();
  }

  @Override
  void run(OpenStudy study) {
    FileDialog dialog = new FileDialog(Over.shell(), SWT.OPEN);
    dialog.setText(Words.of("merging.title"));
    dialog.setFilterExtensions(new String[] {"*.zip;study.xmi", "*.*"});
    DiskCopy.last().ifPresent(f -> dialog.setFilterPath(f.toString()));
    String chosen = dialog.open();
    if (chosen != null) {
      MergingStart.start(study, Path.of(chosen));
    }
  }
}
