package daubline.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.ValueKind;
import daubline.model.DataFile;
import daubline.model.Measurement;
import daubline.model.ModelFactory;
import daubline.model.Piece;
import daubline.model.ResidueMass;
import daubline.model.Series;
import daubline.model.Trial;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written while somebody records blind is marked, and nothing else. The data is invented. */
class BlindRecordingsTest {

  private static final ModelFactory MAKE = ModelFactory.eINSTANCE;
  private static final Instant MORNING = Instant.parse("2031-05-01T08:00:00Z");
  private static final Instant NOON = Instant.parse("2031-05-01T12:00:00Z");

  @TempDir
  Path folder;
  private StudySession session;
  private Trial trial;
  private ResidueMass early;

  @BeforeEach
  void make() throws Exception {
    session = StudySession.create(folder.resolve("study"), "Study");
    session.hidesWhileBlind();
    session.edit("series", () -> {
      Series series = MAKE.createSeries();
      session.study().getSeries().add(series);
      for (int i = 0; i < 200; i++) {
        series.getTrials().add(MAKE.createTrial());
      }
      trial = series.getTrials().get(0);
      trial.setRemains(MAKE.createRemainsSheet());
      early = residue("1 kg");
    });
  }

  @AfterEach
  void close() {
    session.close();
  }

  private ResidueMass residue(String typed) {
    ResidueMass mass = MAKE.createResidueMass();
    mass.setTyped(typed);
    trial.getRemains().getResidues().add(mass);
    return mass;
  }

  private Piece piece() {
    Piece piece = MAKE.createPiece();
    trial.getPieces().add(piece);
    return piece;
  }

  @Test
  void marksWhatIsWrittenMeanwhileAndKeepsItThroughReopening() throws Exception {
    BlindRecordings.begin(session, "begin", "Ann", MORNING);
    ResidueMass[] late = new ResidueMass[1];
    session.edit("residue", () -> late[0] = residue("2 kg"));
    session.edit("piece", this::piece);
    session.edit("other trial", () -> ((Series) trial.eContainer()).getTrials().get(1).setRemains(MAKE.createRemainsSheet()));
    assertTrue(BlindRecordings.of(early).isEmpty(), "was there before");
    session.save();
    String id = late[0].getId();
    session.close();
    try (StudySession again = StudySession.open(folder.resolve("study"))) {
      assertTrue(BlindRecordings.current(again.study()).isPresent(), "still on");
      BlindRecordings.end(again, "end", "Bo", NOON);
      assertTrue(BlindRecordings.current(again.study()).isEmpty());
      ResidueMass kept = again.find(id, ResidueMass.class).orElseThrow();
      assertEquals("Ann from 2031-05-01T08:00:00Z to 2031-05-01T12:00:00Z, ended by Bo", BlindRecordings.said(BlindRecordings.of(kept).orElseThrow()));
      assertEquals(3, BlindRecordings.written(again.study().getBlindRecordings().get(0)).size());
      var other = again.study().getSeries().get(0).getTrials().get(1).getRemains();
      assertTrue(other.isBlind() && "Ann".equals(other.getRecordedBy().getName()));
    }
  }

  @Test
  void undoTakesEntriesBackButNeverTheBeginningOrTheEnd() {
    BlindRecordings.begin(session, "begin", "Ann", MORNING);
    assertTrue(session.undoLabel().isEmpty(), "undo does not go behind the beginning");
    session.edit("residue", () -> residue("2 kg"));
    session.undo();
    session.redo();
    assertTrue(BlindRecordings.of(trial.getRemains().getResidues().get(1)).isPresent());
    session.undo();
    session.undo();
    assertTrue(BlindRecordings.current(session.study()).isPresent());
    BlindRecordings.end(session, "end", "Ann", NOON);
    session.undo();
    assertTrue(BlindRecordings.current(session.study()).isEmpty());
  }

  @Test
  void whoSeesEverythingTakesTheMarkAwayByChanging() {
    BlindRecordings.begin(session, "begin", "Ann", MORNING);
    session.edit("laid out", () -> residue(null));
    session.edit("piece", this::piece);
    BlindRecordings.end(session, "end", "Ann", NOON);
    ResidueMass residue = trial.getRemains().getResidues().get(1);
    Piece piece = trial.getPieces().get(0);
    session.edit("changed", () -> residue.setTyped("3 kg"));
    assertTrue(BlindRecordings.of(residue).isEmpty());
    assertTrue(BlindRecordings.of(piece).isPresent(), "another entry keeps its mark");
    session.edit("weighed", () -> piece.getValues().add(MAKE.createReading()));
    assertTrue(BlindRecordings.of(piece).isEmpty());
    session.undo();
    assertTrue(BlindRecordings.of(piece).isPresent());
    session.edit("new", () -> residue("4 kg"));
    assertTrue(BlindRecordings.of(trial.getRemains().getResidues().get(2)).isEmpty());
  }

  @Test
  void whatWasLaidOutEmptyCountsWhenItIsTyped() {
    ResidueMass[] row = new ResidueMass[1];
    session.edit("laid out", () -> row[0] = residue(null));
    BlindRecordings.begin(session, "begin", "Ann", MORNING);
    session.edit("typed", () -> row[0].setTyped("5 kg"));
    session.edit("corrected", () -> early.setTyped("6 kg"));
    assertTrue(BlindRecordings.of(row[0]).isPresent());
    assertFalse(BlindRecordings.of(early).isPresent(), "its first value was not written blind");
  }

  @Test
  void changesMadeElsewhereWhileItIsOnAreNotMarked() throws Exception {
    BlindRecordings.begin(session, "begin", "Ann", MORNING);
    session.save();
    session.close();
    try (StudySession seeing = StudySession.open(folder.resolve("study"))) {
      Trial there = seeing.study().getSeries().get(0).getTrials().get(0);
      seeing.edit("residue", () -> there.getRemains().getResidues().add(MAKE.createResidueMass()));
      assertTrue(BlindRecordings.written(seeing.study().getBlindRecordings().get(0)).isEmpty());
    }
  }

  @Test
  void codeNamesDifferStayAndChangeWithTheRecording() {
    assertTrue(BlindRecordings.codes(session.study()).isEmpty());
    BlindRecordings.begin(session, "begin", "Ann", MORNING);
    Map<String, String> codes = BlindRecordings.codes(session.study());
    assertEquals(200, new HashSet<>(codes.values()).size());
    session.edit("one more", () -> ((Series) trial.eContainer()).getTrials().add(MAKE.createTrial()));
    assertEquals(codes.get(trial.getId()), BlindRecordings.codes(session.study()).get(trial.getId()));
    BlindRecordings.end(session, "end", "Ann", NOON);
    BlindRecordings.begin(session, "begin", "Ann", NOON);
    assertNotEquals(codes.get(trial.getId()), BlindRecordings.codes(session.study()).get(trial.getId()));
    assertEquals(1, session.study().getPeople().size(), "Ann is one person");
  }

  @Test
  void nobodyAndTwiceAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> BlindRecordings.end(session, "end", "Ann", MORNING));
    assertThrows(IllegalArgumentException.class, () -> BlindRecordings.begin(session, "begin", " ", MORNING));
    BlindRecordings.begin(session, "begin", "Ann", MORNING);
    assertThrows(IllegalArgumentException.class, () -> BlindRecordings.begin(session, "begin", "Bo", NOON));
    assertThrows(IllegalArgumentException.class, () -> BlindRecordings.end(session, "end", " ", NOON));
    assertTrue(BlindRecordings.current(session.study()).isPresent());
  }

  /** What others wrote before tells the outcome; what is laid out and empty, a picture of the ruin and its scale do not. */
  @Test
  void onlyWhatIsWrittenMeanwhileIsSeen() {
    DataFile ofTheRun = MAKE.createDataFile();
    DataFile ofTheRuin = MAKE.createDataFile();
    Measurement scale = MAKE.createMeasurement();
    Measurement line = MAKE.createMeasurement();
    ResidueMass[] rows = new ResidueMass[3];
    session.edit("before", () -> {
      rows[0] = residue(null);
      rows[0].setKind(ValueKind.NOT_RECORDED);
      rows[1] = residue(null);
      rows[1].setKind(ValueKind.NOT_RECORDED);
      rows[1].setCount(14);
      trial.getFiles().add(ofTheRun);
      trial.getRemains().getFiles().add(ofTheRuin);
      scale.setScale(true);
      ofTheRuin.getMeasurements().addAll(List.of(scale, line));
    });
    Piece before = piece();
    List<EObject> all = List.of(early, rows[0], rows[1], ofTheRun, ofTheRuin, scale, line, before);
    assertTrue(all.stream().allMatch(session::shows), "all is shown while nobody records blind");
    BlindRecordings.begin(session, "begin", "Ann", MORNING);
    assertEquals(List.of(rows[0], ofTheRuin, scale), all.stream().filter(session::shows).toList());
    session.edit("meanwhile", () -> rows[2] = residue("2 kg"));
    assertTrue(session.shows(rows[2]));
    trial.setName("T 7");
    assertNotEquals("T 7", session.nameOf(trial));
    BlindRecordings.end(session, "end", "Ann", NOON);
    assertTrue(all.stream().allMatch(session::shows));
    assertEquals("T 7", session.nameOf(trial));
    BlindRecordings.begin(session, "begin", "Bo", NOON);
    assertFalse(session.shows(rows[2]), "the next recorder does not see what the one before wrote");
  }
}
