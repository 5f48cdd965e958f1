package daubline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.session.StudySession;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The visits of the demonstration study, which is invented. */
class VisitsCommandTest {

  @TempDir
  Path folder;

  @Test
  void whatIsDueDependsOnTheDay() throws Exception {
    Path study = folder.resolve("study");
    try (StudySession session = StudySession.read(Path.of("seeds/aldervale"))) {
      session.saveCopy(study);
    }
    assertTrue(Run.of("visits", study.toString(), "--due", "--on", "2031-08-01").out().contains("no visit is due on 2031-08-01"));
    Run all = Run.of("visits", study.toString(), "--on", "2033-01-01");
    assertEquals(0, all.exit(), all.err());
    assertTrue(all.out().contains("A shed was founded on the spot.") && all.out().contains("observations of the standing wall") && all.out().contains("mm per year"), all.out());
    Run planned = Run.of("visits", study.toString(), "--plan", "Aldervale 1", "--after", "6,12");
    assertEquals(0, planned.exit(), planned.err());
    assertTrue(planned.out().contains("2 visits planned"), planned.out());
    assertTrue(Run.of("visits", study.toString(), "--plan", "Aldervale 1", "--after", "6,12").out().contains("0 visits planned, 2 were there already"));
    assertTrue(Run.of("visits", study.toString(), "--due", "--on", "2031-11-10").out().contains("Aldervale 1  2031-11-10"));
    assertEquals(1, Run.of("visits", study.toString(), "--plan", "Aldervale 1").exit());
  }

  @Test
  void visitsAndDecayArePrintedAsTables() {
    Run visits = Run.of("table", "seeds/aldervale", "visits");
    assertTrue(visits.exit() == 0 && visits.out().contains("as found after the fire"), visits.out() + visits.err());
    Run decay = Run.of("table", "seeds/aldervale", "decay");
    assertTrue(decay.exit() == 0 && decay.out().contains("Aldervale 2"), decay.out() + decay.err());
  }
}
