package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.ui.Words;
import daubline.ui.study.FileDrop;
import daubline.ui.study.OpenStudy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A table dropped on the window is previewed, taken over as one change, and undone to the same bytes. */
class ImportTest {

  @AfterEach
  void clear() {
    Window.clear();
  }

  @Test
  void aDroppedTableIsOneUndoableChange() throws Exception {
    OpenStudy study = Window.demonstration();
    String before = study.session().digest();
    int trials = study.session().study().getSeries().get(0).getTrials().size();
    Path file = Files.createTempFile("trials", ".csv");
    String series = study.session().study().getSeries().get(0).getName();
    Files.writeString(file, "series,name,kind,status,planned:furnace_height (cm)\n" + series + ",Dropped 1,pilot,planned,95\n");
    Window.answer(Words.of("import.title"), Words.of("import.do"));
    FileDrop.take(List.of(file));
    Window.pump();
    assertEquals(trials + 1, study.session().study().getSeries().get(0).getTrials().size());
    assertTrue(study.session().undoLabel().orElseThrow().startsWith("Import"), study.session().undoLabel().orElseThrow());
    study.session().undo();
    assertEquals(before, study.session().digest());
    Files.delete(file);
  }
}
