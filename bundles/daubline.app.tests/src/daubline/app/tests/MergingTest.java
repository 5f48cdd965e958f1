package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.session.StudySession;
import daubline.ui.Words;
import daubline.ui.study.FileDrop;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Seeds;
import daubline.ui.table.MergingStart;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Another person's copy is compared in a dialog, chosen from field by field, and merged as one change. */
class MergingTest {

  @AfterEach
  void clear() {
    Window.clear();
  }

  @Test
  void conflictsAreChosenAndTheMergeIsOneChange() throws Exception {
    OpenStudy study = Window.demonstration();
    Path theirs = Seeds.home().resolve("theirs-" + System.nanoTime());
    study.session().saveCopy(theirs);
    try (StudySession other = StudySession.open(theirs)) {
      other.edit("work", () -> {
        other.study().setNote("theirs");
        other.study().setQuestion("What they ask");
      });
      other.save();
    }
    study.edit("change.field", "note", () -> study.session().study().setNote("mine"));
    String before = study.session().digest();
    MergingStart.start(study, theirs);
    Display.getCurrent().timerExec(200, new Runnable() {
      @Override
      public void run() {
        Shell dialog = Arrays.stream(Display.getCurrent().getShells()).filter(s -> s.getText().equals(Words.of("merging.title"))).findFirst().orElse(null);
        if (dialog == null) {
          Display.getCurrent().timerExec(200, this);
          return;
        }
        NatTable grid = Window.all(dialog).stream().filter(NatTable.class::isInstance).map(NatTable.class::cast).findFirst().orElseThrow();
        assertTrue(grid.getRowCount() >= 3, "two conflicts and the headings");
        Window.answer(Words.of("merging.title"), Words.of("merging.theirs"));
        Display.getCurrent().timerExec(500, () -> Window.answer(Words.of("merging.title"), Words.of("merging.do")));
      }
    });
    Window.waitFor("the merge", () -> "theirs".equals(study.session().study().getNote()));
    assertEquals("What they ask", study.session().study().getQuestion());
    assertEquals(Words.of("change.merging", theirs.getFileName()), study.session().undoLabel().orElseThrow());
    study.session().undo();
    assertEquals(before, study.session().digest());
    Window.waitForResults(study);
  }

  @Test
  void aDroppedBackupAsksFirst() throws Exception {
    OpenStudy study = Window.demonstration();
    Path disk = java.nio.file.Files.createTempDirectory("disk");
    Path packet = daubline.session.backup.BackupWriter.copy(study.session().image(), disk, java.time.LocalDateTime.of(2024, 5, 1, 8, 0),
        daubline.session.backup.Work.UNWATCHED).file();
    String before = study.session().digest();
    Window.answer(Words.of("merging.question.title"), Words.of("import.cancel"));
    FileDrop.take(List.of(packet));
    assertEquals(before, study.session().digest());
  }
}
