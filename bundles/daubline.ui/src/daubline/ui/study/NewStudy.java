package daubline.ui.study;

import daubline.session.StudyException;
import daubline.session.StudySession;
import daubline.ui.Words;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;

/** Begins a new study: one question, its name. It is kept in the person's folder of studies. */
public final class NewStudy {

  private NewStudy() {
  }

  /** Asks for the name and opens the new study. */
  public static void ask(Shell shell) {
    InputDialog dialog = new InputDialog(shell, Words.of("new.title"), Words.of("new.text", Seeds.home()), "", NewStudy::complaint);
    if (dialog.open() == Window.OK) {
      create(dialog.getValue().strip());
    }
  }

  private static String complaint(String name) {
    if (name.isBlank() || folderName(name).isEmpty()) {
      return Words.of("new.empty");
    }
    return Files.exists(Seeds.home().resolve(folderName(name))) ? Words.of("new.exists", folderName(name)) : null;
  }

  /** A name as the name of a folder: lower case, everything but letters and digits a hyphen. */
  static String folderName(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
  }

  private static void create(String name) {
    Path folder = Seeds.home().resolve(folderName(name));
    try {
      Files.createDirectories(folder.getParent());
      StudySession.create(folder, name).close();
      Start.open(() -> folder);
    } catch (StudyException e) {
      Notices.show(e.finding());
    } catch (java.io.IOException e) {
      Notices.show(Words.of("open.failed"), String.valueOf(e));
    }
  }
}
