package daubline.ui.study;

import daubline.session.StudyException;
import daubline.ui.Parts;
import daubline.ui.Words;
import daubline.ui.hearth.HearthsideInput;
import daubline.ui.look.Over;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;

/** What happens when the window opens, when a study is opened or saved, and when the window closes. */
public final class Start {

  private static final String STUDY_OPTION = "-study";

  private Start() {
  }

  /** Shows the start page and opens the studies that the command line names after -study. */
  public static void with(String... arguments) {
    closeForgotten();
    hearthside();
    for (int i = 1; i < arguments.length; i++) {
      if (arguments[i - 1].equals(STUDY_OPTION)) {
        Path given = Path.of(arguments[i]).toAbsolutePath().normalize();
        open(() -> given.endsWith("study.xmi") ? given.getParent() : given);
      }
    }
  }

  /** After the window was ended from outside, the platform remembers editors whose studies are not open any more. */
  private static void closeForgotten() {
    page().closeEditors(page().getEditorReferences(), false);
  }

  /** Shows the start page. */
  public static void hearthside() {
    try {
      page().openEditor(HearthsideInput.ONLY, Parts.HEARTHSIDE);
    } catch (PartInitException e) {
      Platform.getLog(Start.class).error(e.getMessage(), e);
    }
  }

  private static IWorkbenchPage page() {
    IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
    return (window == null ? PlatformUI.getWorkbench().getWorkbenchWindows()[0] : window).getActivePage();
  }

  /** Opens a study behind; the place is worked out there too, since it may have to be copied first. */
  public static void open(Callable<Path> place) {
    new OpenJob(place, Start::showStudy).schedule();
  }

  private static void showStudy() {
    try {
      page().showView(Parts.STUDY);
    } catch (PartInitException e) {
      Platform.getLog(Start.class).error(e.getMessage(), e);
    }
  }

  /**
   * Saves a study; asks when somebody else changed its files meanwhile.
   *
   * @return whether it was saved
   */
  public static boolean save(OpenStudy study) {
    try {
      if (!study.session().changedOutside().isEmpty() && !maySaveOver(study)) {
        return false;
      }
      study.session().saveOverOutsideChanges();
      BackupJob.afterSave(study.folder());
      return true;
    } catch (StudyException e) {
      Notices.show(e.finding());
      return false;
    }
  }

  private static boolean maySaveOver(OpenStudy study) throws StudyException {
    String files = String.join(", ", study.session().changedOutside());
    return MessageDialog.openQuestion(Over.shell(), Words.of("outside.title"), Words.of("outside.text", study.name(), files));
  }

  /** Closes a study after asking about unsaved changes; returns whether it was closed. */
  public static boolean close(OpenStudy study) {
    boolean may = mayClose(study);
    if (may) {
      Studies.get().close(study);
      BackupJob.afterClose(study.folder());
    }
    return may;
  }

  private static boolean mayClose(OpenStudy study) {
    if (!study.session().isDirty()) {
      return true;
    }
    MessageDialog question = new MessageDialog(Over.shell(), Words.of("unsaved.title"), null,
        Words.of("unsaved.text", study.name()), MessageDialog.QUESTION, 0, Words.of("unsaved.save"), Words.of("unsaved.discard"), Words.of("unsaved.cancel"));
    return switch (question.open()) {
      case 0 -> save(study);
      case 1 -> {
        study.session().discardChanges();
        yield true;
      }
      default -> false;
    };
  }

  /** Whether the window may close; asks about each unsaved study and closes all of them when it may. */
  public static boolean mayEnd() {
    for (OpenStudy study : Studies.get().all()) {
      if (!close(study)) {
        return false;
      }
    }
    BackupJob.finish();
    return true;
  }
}
