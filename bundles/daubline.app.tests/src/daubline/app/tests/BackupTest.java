package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.session.backup.Backup;
import daubline.session.backup.BackupReader;
import daubline.session.backup.RollingBackups;
import daubline.ui.Words;
import daubline.ui.study.DiskCopy;
import daubline.ui.study.FileDrop;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Seeds;
import daubline.ui.study.Start;
import daubline.ui.study.Studies;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A saved and closed study leaves a dated backup; a copy on a disk is read back and opened again by dropping it. */
class BackupTest {

  @AfterEach
  void clear() {
    Window.clear();
  }

  @Test
  void aStudySavedAndClosedLeavesABackup() throws Exception {
    OpenStudy study = Window.demonstration();
    Path folder = study.folder();
    study.edit("change.field", "question", () -> study.session().study().setQuestion("Which blast?"));
    assertTrue(Start.save(study));
    Window.waitFor("a backup", () -> backups(folder).size() == 1);
    assertTrue(Start.close(study));
    Window.pump();
    assertEquals(1, backups(folder).size(), "nothing changed between saving and closing");
  }

  private static List<Backup> backups(Path folder) {
    try {
      return RollingBackups.of(folder);
    } catch (daubline.session.StudyException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void aCopyOnADiskIsReadBackAndOpensWhenDropped() throws Exception {
    OpenStudy study = Window.demonstration();
    study.edit("change.field", "question", () -> study.session().study().setQuestion("Not saved yet?"));
    Path disk = Files.createTempDirectory("disk");
    Window.answer(Words.of("disk.title"), IDialogConstants.OK_LABEL);
    DiskCopy.start(study, disk);
    Path[] made = new Path[1];
    Window.waitFor("the copy", () -> {
      try (var files = Files.list(disk)) {
        made[0] = files.filter(f -> f.toString().endsWith(".zip")).findFirst().orElse(null);
        return made[0] != null;
      } catch (java.io.IOException e) {
        return false;
      }
    });
    Window.waitFor("the dialog was answered", () -> java.util.Arrays.stream(Display.getCurrent().getShells()).noneMatch(BackupTest::isReport));
    assertEquals(disk, DiskCopy.last().orElseThrow());
    try (BackupReader reader = BackupReader.open(made[0])) {
      assertTrue(reader.files() > 3, "files " + reader.files());
    }
    Window.answer(Words.of("merging.question.title"), Words.of("merging.question.open"));
    FileDrop.take(List.of(made[0]));
    Path expected = Seeds.home().resolve(made[0].getFileName().toString().replace(".zip", ""));
    Window.waitFor("the backup opened", () -> Studies.get().find(expected).isPresent());
    assertEquals("Not saved yet?", Studies.get().find(expected).orElseThrow().session().study().getQuestion());
  }

  private static boolean isReport(Shell shell) {
    return shell.getText().equals(Words.of("disk.title"));
  }
}
