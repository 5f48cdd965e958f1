package daubline.ui.commands;

import daubline.analysis.Snapshots;
import daubline.analysis.deposit.HiddenNames;
import daubline.export.Discretion;
import daubline.export.format.Bibliography;
import daubline.ui.Words;
import daubline.ui.look.Over;
import daubline.ui.study.Notices;
import daubline.ui.study.OpenStudy;
import java.io.IOException;
import java.nio.file.Path;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;

/** Writes the citations of the current study into a bibliographic file that the user names. */
public final class ExportCitations extends StudyHandler {

  @Override
  boolean can(OpenStudy study) {
    return !study.session().study().getCitations().isEmpty();
  }

  @Override
  void run(OpenStudy study) {
    FileDialog dialog = new FileDialog(Over.shell(), SWT.SAVE);
    dialog.setText(Words.of("citations.export"));
    dialog.setFileName("references.bib");
    dialog.setOverwrite(true);
    dialog.setFilterExtensions(new String[] {"*.bib", "*.ris"});
    String name = dialog.open();
    if (name != null) {
      write(study, Path.of(name));
    }
  }

  /** Writes them; says what went wrong when it cannot. */
  public static void write(OpenStudy study, Path file) {
    try {
      Bibliography.write(new Discretion(HiddenNames.of(study.session().study())).citations(Snapshots.of(study.session()).record().citations()), file);
    } catch (IOException | IllegalArgumentException e) {
      Notices.show(Words.of("citations.failed", file), e.getMessage());
    }
  }
}
