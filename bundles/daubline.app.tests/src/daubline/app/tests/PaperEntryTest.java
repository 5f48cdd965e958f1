package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.model.Charge;
import daubline.model.LogEntry;
import daubline.model.Trial;
import daubline.session.StudySession;
import daubline.ui.study.OpenStudy;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/**
 * The log of a long day is typed from its sheets, in their order and with keys alone, pressed on the display: so many cells that a
 * practised hand needs an hour for them by the keystroke-level model (Card, Moran & Newell 1980, Communications of the ACM 23,
 * 396–410; a key 0.28 s, thinking 1.35 s before each cell). Undo goes back to the same bytes, redo to what was typed.
 */
class PaperEntryTest {

  private static final int FIRST_MINUTE = 9 * 60;
  private static final int LINES = 132;
  private static final double KEY_SECONDS = 0.28;
  private static final double THINK_SECONDS = 1.35;
  private static final double HOUR_SECONDS = 3600;

  @AfterEach
  void clear() {
    Window.clear();
  }

  /** The lines of the sheets, cell by cell: charges, temperatures, blast and remarks, every four minutes. */
  private static List<List<String>> paper() {
    List<List<String>> lines = new ArrayList<>();
    for (int i = 0; i < LINES; i++) {
      int minute = FIRST_MINUTE + 4 * i;
      String time = String.format(Locale.ROOT, "%02d%02d", minute / 60, minute % 60);
      lines.add(switch (i % 4) {
        case 0 -> List.of(time, "charge", (1100 + 10 * (i % 13)) + " g", (1900 + 10 * (i % 29)) + " g", "burden down " + (60 + i % 70) + " mm, ore spread to the rim", "");
        case 1 -> List.of(time, "temperature", (1080 + i % 97) + "/" + (840 + i % 61) + "/" + (300 + i % 45), "middle probe read twice, shade over the display", "");
        case 2 -> List.of(time, "blast", (620 + i % 40) + "", "second crew at the bellows, even strokes, no rest", "");
        default -> List.of(time, "note", "flame short and blue over the whole mouth, little smoke, wind from the west", "");
      });
    }
    return lines;
  }

  private static double seconds(List<List<String>> lines) {
    return lines.stream().flatMap(List::stream).mapToDouble(cell -> THINK_SECONDS + KEY_SECONDS * (cell.length() + 1)).sum();
  }

  @Test
  void anHourOfPaperIsTypedByKeysAloneUndoneAndDoneAgain() throws Exception {
    List<List<String>> lines = paper();
    assertTrue(seconds(lines) >= HOUR_SECONDS, "seconds of a practised hand: " + seconds(lines));
    OpenStudy study = Window.demonstration();
    StudySession session = study.session();
    Trial trial = Window.firstTrial(study);
    int rows = trial.getLog().size();
    String before = session.digest();
    Window.sheet(trial).show("record.log");
    Window.front();
    NatTable grid = Window.find("log", NatTable.class);
    grid.forceFocus();
    Keys.rest(300);
    Keys.plainly(() -> type(grid, lines));
    typed(trial, rows, lines);
    String after = session.digest();
    while (session.undoLabel().isPresent()) {
      session.undo();
    }
    assertEquals(before, session.digest());
    while (session.redoLabel().isPresent()) {
      session.redo();
    }
    assertEquals(after, session.digest());
  }

  private static void type(NatTable grid, List<List<String>> lines) {
    long start = System.nanoTime();
    lines.forEach(line -> line.forEach(cell -> Keys.write(grid, cell)));
    System.out.printf(Locale.ROOT, "PaperEntryTest: %d lines, %d cells; a practised hand needs %.0f min, the keys here took %.0f s%n", lines.size(),
        lines.stream().mapToInt(List::size).sum(), seconds(lines) / 60, (System.nanoTime() - start) / 1e9);
  }

  /** Everything stands in the study as it stood on the sheets, in their order. */
  private static void typed(Trial trial, int rows, List<List<String>> lines) {
    List<LogEntry> log = trial.getLog().subList(rows, trial.getLog().size());
    assertEquals(lines.size(), log.size());
    for (int i = 0; i < lines.size(); i++) {
      List<String> line = lines.get(i);
      LogEntry entry = log.get(i);
      assertEquals(line.get(1), entry.getKind());
      assertEquals(line.get(line.size() - 2), entry.getText());
      switch (i % 4) {
        case 0 -> {
          Charge charge = (Charge) entry;
          assertEquals(List.of(line.get(2), line.get(3)), charge.getItems().stream().map(item -> item.getTyped() + " " + item.getUnit()).toList());
        }
        case 1 -> assertEquals(3, entry.getValues().size());
        case 2 -> assertTrue(!entry.getValues().isEmpty(), "the air of line " + i);
        default -> {
          // a note is its text
        }
      }
    }
  }
}
