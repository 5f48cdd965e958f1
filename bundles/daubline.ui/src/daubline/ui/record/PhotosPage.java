package daubline.ui.record;

import daubline.base.Finding;
import daubline.intake.IntakeException;
import daubline.intake.PictureFile;
import daubline.model.DataFile;
import daubline.record.PhotoTable;
import daubline.ui.Words;
import daubline.ui.study.FileDrop;
import daubline.ui.study.OpenStudy;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;

/** The photographs, scans and drawings of a trial or a sheet; added by a dialog or by dropping files on the page. */
public final class PhotosPage extends RecordPage {

  private final OpenStudy study;
  private final Supplier<List<DataFile>> home;

  /**
   * A page.
   *
   * @param files where pictures are found
   * @param home where a new one goes, made when there is none; called inside a change
   */
  public PhotosPage(Composite parent, OpenStudy study, Supplier<List<DataFile>> files, Supplier<List<DataFile>> home) {
    super(parent, new PhotoTable(RecordPages.desk(study), files));
    this.study = study;
    this.home = home;
    button("photos.add", () -> take(choose(this))).setEnabled(!study.session().isReadOnly());
    FileDrop.on(grid().control(), this::take);
  }

  /** Asks for pictures and papers. */
  static List<Path> choose(RecordPage page) {
    FileDialog dialog = new FileDialog(page.control().getShell(), SWT.OPEN | SWT.MULTI);
    dialog.setFilterExtensions(new String[] {PictureFile.filter(PictureFile.PAPERS), "*.*"});
    return dialog.open() == null ? List.of() : Arrays.stream(dialog.getFileNames()).map(name -> Path.of(dialog.getFilterPath(), name)).toList();
  }

  /** Takes files into the study, each as one change; says below the table which could not be taken, and why. */
  public void take(List<Path> chosen) {
    List<String> refused = new ArrayList<>();
    Optional<DataFile> last = Optional.empty();
    for (Path file : chosen) {
      try {
        last = Optional.of(PictureFile.add(study.session(), file, home, "picture", PictureFile.PAPERS, Words.of("change.picture", file.getFileName())));
      } catch (IntakeException e) {
        Finding finding = e.findings().get(0);
        refused.add(Words.said(finding));
      }
    }
    refresh();
    last.ifPresent(this::reveal);
    if (!refused.isEmpty()) {
      say(String.join(" ", refused), true);
    }
  }
}
