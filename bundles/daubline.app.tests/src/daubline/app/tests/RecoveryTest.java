package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.ui.Words;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Seeds;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What a window that was killed left in the journal is offered at the next opening, with a summary. */
class RecoveryTest {

  @AfterEach
  void clear() {
    Window.clear();
  }

  @Test
  void unsavedChangesAreOfferedAndTakenOver() throws Exception {
    OpenStudy study = Window.demonstration();
    study.edit("change.field", "question", () -> study.session().study().setQuestion("Does the mouth matter?"));
    String digest = study.session().digest();
    Path journal = study.folder().resolve(".daubline/journal");
    Window.waitFor("the journal", () -> Files.isDirectory(journal) && hasFiles(journal));
    Path left = Seeds.home().resolve("left-by-a-kill-" + System.nanoTime());
    copy(study.folder(), left);
    Window.answer(Words.of("recover.title"), Words.of("recover.yes"));
    OpenStudy recovered = Window.open(left);
    assertEquals("Does the mouth matter?", recovered.session().study().getQuestion());
    assertTrue(recovered.session().isDirty(), "recovered changes are not saved yet");
    assertEquals(digest, recovered.session().digest());
  }

  private static boolean hasFiles(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.anyMatch(f -> f.getFileName().toString().endsWith(".xmi"));
    } catch (IOException e) {
      return false;
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Path target = to.resolve(from.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(target);
        } else if (!file.getFileName().toString().equals("lock")) {
          Files.copy(file, target);
        }
      }
    }
  }
}
