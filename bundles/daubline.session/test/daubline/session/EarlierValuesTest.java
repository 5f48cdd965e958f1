package daubline.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Amount;
import daubline.model.Earlier;
import daubline.model.ModelFactory;
import daubline.model.Person;
import daubline.model.Reading;
import daubline.model.StagedValue;
import daubline.model.Trial;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A saved value that somebody types over is kept with who had recorded it, until when it stood and by which change it went. */
class EarlierValuesTest {

  @TempDir
  private Path folder;

  @BeforeEach
  void copy() throws Exception {
    try (StudySession seed = StudySession.read(Path.of("seeds/aldervale"))) {
      seed.saveCopy(folder.resolve("study"));
    }
  }

  private StudySession open() throws Exception {
    return StudySession.open(folder.resolve("study"));
  }

  private static StagedValue value(StudySession session) {
    return session.study().getSeries().get(0).getTrials().get(0).getValues().stream().filter(v -> v.getTyped() != null && v.getValue() != null).findFirst().orElseThrow();
  }

  private static void type(StudySession session, String change, Reading reading, String typed, double canonical) {
    session.edit(change, () -> {
      Readings.put(reading, Amount.exact(canonical));
      reading.setTyped(typed);
    });
  }

  @Test
  void aSavedValueIsKeptOverSaveAndReopening() throws Exception {
    String before;
    String id;
    Person who = ModelFactory.eINSTANCE.createPerson();
    try (StudySession session = open()) {
      StagedValue value = value(session);
      id = value.getId();
      before = value.getTyped();
      session.edit("Somebody", () -> {
        who.setName("Edda Marl");
        session.study().getPeople().add(who);
        value.setBy(who);
      });
      assertEquals(List.of(), value.getEarlier(), "the person alone is no other value");
      session.save();
      type(session, "Weighed again", value, "12", 12);
      type(session, "A slip of the pen", value, "13", 13);
      Earlier earlier = value.getEarlier().get(0);
      assertEquals(1, value.getEarlier().size(), "a correction before saving leaves no trace");
      assertEquals(List.of(before, "Weighed again", who), List.of(earlier.getTyped(), earlier.getChange(), earlier.getBy()));
      session.save();
      type(session, "Third", value, "14", 14);
      assertEquals("13", value.getEarlier().get(1).getTyped());
      session.save();
    }
    try (StudySession session = open()) {
      Reading value = session.find(id, Reading.class).orElseThrow();
      assertEquals(List.of(before, "13"), value.getEarlier().stream().map(Earlier::getTyped).toList());
      assertEquals("Edda Marl", value.getEarlier().get(0).getBy().getName());
    }
  }

  @Test
  void undoTakesItBackAndTheNextChangeKeepsItAgain() throws Exception {
    try (StudySession session = open()) {
      StagedValue value = value(session);
      String before = value.getTyped();
      type(session, "First", value, "12", 12);
      session.undo();
      assertTrue(value.getEarlier().isEmpty());
      type(session, "Second", value, "13", 13);
      assertEquals(List.of("Second"), value.getEarlier().stream().map(Earlier::getChange).toList());
      session.undo();
      session.redo();
      assertEquals(List.of(before), value.getEarlier().stream().map(Earlier::getTyped).toList());
      session.discardChanges();
    }
  }

  @Test
  void whatIsNewHasNoHistoryAndNeitherHasACopy() throws Exception {
    try (StudySession session = open()) {
      Trial trial = session.study().getSeries().get(0).getTrials().get(0);
      StagedValue made = ModelFactory.eINSTANCE.createStagedValue();
      session.edit("New", () -> {
        made.setVariable("bloom_mass");
        trial.getValues().add(made);
        Readings.put(made, Amount.exact(3));
      });
      type(session, "Typed over", made, "4", 4);
      assertEquals(List.of(), made.getEarlier());
      StagedValue planned = trial.getValues().stream().filter(v -> v.getStage() == daubline.base.Stage.PLANNED && v.getTyped() != null).findFirst().orElse(null);
      if (planned != null) {
        type(session, "Planned otherwise", planned, "5", 5);
        assertEquals(1, planned.getEarlier().size());
      }
      Trial repeat = Repeats.of(trial, "Again");
      assertTrue(repeat.getValues().stream().allMatch(v -> v.getEarlier().isEmpty()));
      session.discardChanges();
    }
  }
}
