package daubline.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Studies written by earlier commits, one sample for each format, load for ever. */
class OldFormatsTest {

  private static final Path SAMPLES = Path.of("bundles/daubline.session/test-data");

  @TempDir
  Path temporary;

  @TestFactory
  Stream<DynamicTest> everyKeptSampleLoadsAndIsSavedInTheCurrentFormat() throws Exception {
    try (Stream<Path> samples = Files.list(SAMPLES)) {
      List<Path> all = samples.sorted().toList();
      assertFalse(all.isEmpty());
      return all.stream().map(sample -> DynamicTest.dynamicTest(sample.getFileName().toString(), () -> loads(sample)));
    }
  }

  private void loads(Path sample) throws Exception {
    Path copy = temporary.resolve(sample.getFileName());
    try (StudySession old = StudySession.read(sample)) {
      assertTrue(old.study().getSeries().get(0).getTrials().size() >= 8);
      assertFalse(old.findings().stream().anyMatch(f -> f.isError()), old.findings().toString());
      old.saveCopy(copy);
    }
    try (StudySession current = StudySession.read(copy)) {
      assertEquals(Migrations.CURRENT, current.study().getFormat());
      assertEquals(3, current.study().getReconstructions().size());
      assertEquals(StudySession.read(sample).digest(), current.digest());
    }
  }
}
