package daubline.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.TrialStatus;
import daubline.model.Prediction;
import daubline.model.Trial;
import daubline.session.Predictions;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Predictions are stated before the fire; afterwards nothing stated is overwritten. Data invented. */
class PredictionTableTest {

  private static final int PROPERTY = 0;
  private static final int VALUE = 1;
  private static final int NOTE = 3;

  @TempDir
  Path folder;
  private Instant now = Instant.parse("2031-05-01T08:00:00Z");

  @Test
  void aPredictionIsLockedWhenTheFireBeginsAndALaterEditIsANewVersion() throws Exception {
    Desk desk = Desks.desk(folder);
    try (StudySession session = desk.session()) {
      Trial trial = Desks.trial(desk);
      PredictionTable table = new PredictionTable(desk, trial, () -> now);
      assertTrue(table.put(0, VALUE, "420 mm").isPresent(), "no property yet");
      assertTrue(table.put(0, PROPERTY, "Base internal diameter").isEmpty());
      assertTrue(table.put(0, VALUE, "42o mm").isPresent());
      assertTrue(table.put(0, VALUE, "400 ± 20 mm").isEmpty());
      assertTrue(table.put(0, VALUE, "410 ± 20 mm").isEmpty(), "open: changed in place");
      assertEquals(1, trial.getPredictions().size());
      assertEquals("2031-05-01T08:00:00Z", trial.getPredictions().get(0).getStatedOn());
      session.edit("fire", () -> trial.setStatus(TrialStatus.FIRED));
      Prediction first = trial.getPredictions().get(0);
      assertTrue(Predictions.isLocked(first));
      assertTrue(table.put(0, NOTE, "changed my mind").orElseThrow().code().equals("prediction.locked"));
      assertFalse(table.canRemove(0));
      String before = session.digest();
      now = Instant.parse("2031-05-02T09:30:00Z");
      assertTrue(table.put(0, VALUE, "500 mm").isEmpty());
      assertEquals(List.of("410 ± 20 mm", "500 mm"), List.of(table.text(0, VALUE), table.text(1, VALUE)));
      Prediction second = trial.getPredictions().get(1);
      assertEquals(first, second.getRevises());
      assertEquals(2, Predictions.version(second));
      assertEquals("2031-05-02T09:30:00Z", second.getStatedOn());
      assertTrue(table.text(1, 5).contains("version 2"), table.text(1, 5));
      session.undo();
      assertEquals(before, session.digest());
    }
  }
}
