package daubline.seeds;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.checks.Checks;
import daubline.base.Finding;
import daubline.session.StudySession;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SeedsTest {

  static final Path SEEDS = Path.of("seeds");

  @TempDir
  Path temporary;

  static Stream<String> folders() {
    return RegenerateSeeds.all().stream().map(SeedStudy::folder);
  }

  static Set<String> files(Path root) throws IOException {
    try (Stream<Path> all = Files.walk(root)) {
      return all.filter(Files::isRegularFile).map(p -> root.relativize(p).toString().replace('\\', '/'))
          .filter(p -> !p.startsWith(".daubline/")).collect(Collectors.toCollection(TreeSet::new));
    }
  }

  private static void assertSame(Path expected, Path actual) throws IOException {
    assertEquals(files(expected), files(actual));
    for (String file : files(expected)) {
      assertArrayEquals(Files.readAllBytes(expected.resolve(file)), Files.readAllBytes(actual.resolve(file)), file);
    }
  }

  @Test
  void everyFolderIsMadeByTheGenerator() throws IOException {
    try (Stream<Path> all = Files.list(SEEDS)) {
      Set<String> there = all.filter(Files::isDirectory).map(p -> p.getFileName().toString()).collect(Collectors.toSet());
      assertEquals(folders().collect(Collectors.toSet()), there);
    }
  }

  @Test
  void theGeneratorReproducesTheCommittedFiles() throws Exception {
    RegenerateSeeds.main(new String[] {temporary.toString()});
    assertSame(SEEDS, temporary);
  }

  @ParameterizedTest
  @MethodSource("folders")
  void savingChangesNoByte(String folder) throws Exception {
    Path copy = temporary.resolve("copy");
    try (StudySession session = StudySession.read(SEEDS.resolve(folder))) {
      session.saveCopy(copy);
    }
    assertSame(SEEDS.resolve(folder), copy);
    Path again = temporary.resolve("again");
    try (StudySession session = StudySession.open(copy)) {
      assertFalse(session.isDirty());
      session.edit("Rename", () -> session.study().setName("Another"));
      session.save();
      session.undo();
      session.save();
      session.saveCopy(again);
    }
    assertSame(SEEDS.resolve(folder), again);
  }

  @ParameterizedTest
  @MethodSource("folders")
  void nothingIsWrongWithIt(String folder) throws Exception {
    try (StudySession session = StudySession.read(SEEDS.resolve(folder))) {
      assertEquals(List.of(), session.findings());
      List<Finding> findings = Checks.run(session);
      assertEquals(List.of(), findings.stream().filter(Finding::isError).toList());
      assertEquals(List.of(), findings.stream().filter(f -> f.code().matches("(file|origin|log|name|mass)\\..*")).toList());
    }
  }

  @ParameterizedTest
  @MethodSource("folders")
  void itSaysWhatItIs(String folder) throws Exception {
    assertTrue(Files.readString(SEEDS.resolve(folder).resolve("README.md")).length() > 200);
  }
}
