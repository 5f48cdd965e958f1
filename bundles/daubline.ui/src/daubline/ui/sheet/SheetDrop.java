package daubline.ui.sheet;

import daubline.intake.PictureFile;
import daubline.ui.Words;
import daubline.ui.look.Over;
import daubline.ui.record.LoggersPage;
import daubline.ui.record.PhotosPage;
import daubline.ui.table.Imports;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/** Takes files that were dropped on the window into the sheet in front: pictures, and files that a logger wrote. */
public final class SheetDrop {

  private static final String LOGGERS = "record.loggers";

  private SheetDrop() {
  }

  /** Whether a file is a photograph, a scan or a drawing by its name. */
  public static boolean isPicture(Path file) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    return PictureFile.PAPERS.stream().anyMatch(ending -> name.endsWith("." + ending));
  }

  /** Takes a file where the sheet in front has a page for it; false when it has none. */
  public static boolean take(Path file) {
    Optional<SheetEditor> front = front();
    if (isPicture(file)) {
      return front.map(editor -> editor.show("record.photos")).filter(PhotosPage.class::isInstance).map(page -> {
        ((PhotosPage) page).take(List.of(file));
        return true;
      }).orElse(false);
    }
    Optional<SheetEditor> trial = front.filter(editor -> Imports.isTable(file) && !Imports.isBibliography(file) && editor.pageKeys().contains(LOGGERS));
    if (trial.filter(editor -> editor.shownKey().equals(LOGGERS) || isLogger(file, editor)).isPresent() && trial.get().show(LOGGERS) instanceof LoggersPage page) {
      page.take(file);
      return true;
    }
    return false;
  }

  /** A table dropped while a trial is in front may be either; the person says which. */
  private static boolean isLogger(Path file, SheetEditor editor) {
    MessageDialog question = new MessageDialog(Over.shell(), Words.of("drop.question"), null, Words.of("drop.question.text", file.getFileName(), editor.getPartName()),
        MessageDialog.QUESTION, 0, Words.of("drop.question.table"), Words.of("drop.question.logger"));
    return question.open() == 1;
  }

  private static Optional<SheetEditor> front() {
    IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
    return Optional.ofNullable(window).map(IWorkbenchWindow::getActivePage).map(p -> p.getActiveEditor()).filter(SheetEditor.class::isInstance).map(SheetEditor.class::cast);
  }
}
