package daubline.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Variables;
import daubline.model.Trial;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pick-lists of looking are edited in a form: the log offers the new words at once, and nothing logged is lost. */
class WordTableTest {

  private static final String FLAME = "flame_colour";

  @TempDir
  Path folder;

  private Desk desk;
  private Trial trial;
  private WordTable words;

  @BeforeEach
  void open() throws Exception {
    desk = Desks.desk(folder);
    trial = Desks.trial(desk);
    words = new WordTable(desk);
  }

  @AfterEach
  void close() {
    desk.session().close();
  }

  private int flame() {
    String name = Variables.standard().get(FLAME).name();
    return IntStream.range(0, words.rows()).filter(r -> words.text(r, 0).equals(name)).findFirst().orElseThrow();
  }

  private List<String> offered() {
    LogTable log = new LogTable(desk, trial);
    return log.choices(0, log.columns().indexOf(FLAME));
  }

  @Test
  void flameSmokeSoundAndInletHaveARowEach() {
    List<String> rows = IntStream.range(0, words.rows()).mapToObj(r -> words.text(r, 0)).toList();
    for (String id : List.of(FLAME, "smoke", "blast_sound", "inlet_view")) {
      assertTrue(rows.contains(Variables.standard().get(id).name()), id);
    }
  }

  @Test
  void typedWordsAreOfferedAtOnceAndAnEmptyCellGoesBack() {
    List<String> before = offered();
    assertTrue(words.put(flame(), 1, "none; violet ;white;violet").isEmpty());
    assertEquals("none; violet; white", words.text(flame(), 1));
    assertEquals(List.of("none", "violet", "white"), offered());
    assertTrue(words.put(flame(), 1, "").isEmpty());
    assertEquals(before, offered());
    assertTrue(desk.session().study().getSettings().isEmpty(), "the standard needs no setting");
    desk.session().undo();
    assertEquals(List.of("none", "violet", "white"), offered());
  }

  @Test
  void whatWasLoggedKeepsItsWordAndIsNamed() {
    LogTable log = new LogTable(desk, trial);
    Desks.row(log, "time", "1000", FLAME, "lilac");
    words.refresh();
    assertTrue(words.finding(flame(), 1).isEmpty());
    words.put(flame(), 1, "none; violet");
    log.refresh();
    assertEquals("lilac", Desks.cell(log, 0, FLAME));
    assertTrue(words.finding(flame(), 1).orElseThrow().what().contains("lilac"));
  }

  @Test
  void wordsThatCouldNotBeChosenAreRefused() {
    assertEquals("words.one", words.put(flame(), 1, "none").orElseThrow().code());
    assertEquals("words.colon", words.put(flame(), 1, "none; violet:2").orElseThrow().code());
    assertEquals("none", words.text(flame(), 1).split(";")[0].split(":")[0]);
    assertFalse(words.canRemove(0));
  }
}
