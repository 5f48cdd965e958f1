package daubline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.session.StudySession;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Backups through the command line; data invented. */
class SafekeepingCommandsTest {

  @TempDir
  Path folder;

  private Path study;
  private String printed;

  @BeforeEach
  void aStudy() throws Exception {
    study = folder.resolve("study");
    try (StudySession session = StudySession.create(study, "Test")) {
      session.save();
    }
    Files.createDirectory(study.resolve("photos"));
    Files.write(study.resolve("photos/1.jpg"), new byte[] {1, 2, 3});
  }

  private int run(Object... arguments) {
    Run run = Run.of(Arrays.stream(arguments).map(Object::toString).toArray(String[]::new));
    printed = run.out() + run.err();
    return run.exit();
  }

  private static Path only(Path folder) throws Exception {
    try (Stream<Path> files = Files.list(folder)) {
      return files.reduce((a, b) -> {
        throw new AssertionError(a + " and " + b);
      }).orElseThrow();
    }
  }

  @Test
  void aCopyIsReadBackAndRestored() throws Exception {
    Path disk = Files.createDirectory(folder.resolve("disk"));
    assertEquals(0, run("backup", study, "--to", disk), printed);
    assertTrue(printed.contains("2 files agree with what was copied, by SHA-256"), printed);
    Path back = folder.resolve("back");
    assertEquals(0, run("restore", only(disk)), printed);
    assertFalse(Files.exists(back));
    assertEquals(0, run("restore", only(disk), back), printed);
    assertTrue(printed.contains("made Test in"), printed);
    assertEquals(1, run("restore", only(disk), back), printed);
    assertTrue(printed.contains("holds files already"), printed);
  }

  @Test
  void aDamagedCopyAndAnAbsentDiskAreSaid() throws Exception {
    Path disk = Files.createDirectory(folder.resolve("disk"));
    assertEquals(0, run("backup", study, "--to", disk), printed);
    Path copy = only(disk);
    byte[] half = Arrays.copyOf(Files.readAllBytes(copy), (int) Files.size(copy) / 2);
    Files.write(copy, half);
    assertEquals(1, run("restore", copy, folder.resolve("back")));
    assertTrue(printed.contains("take another backup"), printed);
    assertFalse(Files.exists(folder.resolve("back")));
    assertEquals(1, run("backup", study, "--to", folder.resolve("nowhere")));
    assertTrue(printed.contains("plug the disk in"), printed);
  }

  @Test
  void withoutAFolderTheyRoll() throws Exception {
    assertEquals(0, run("backup", study, "--keep", "1,0,0"), printed);
    assertEquals(0, run("backup", study), printed);
    assertTrue(printed.contains("did not change since"), printed);
    Files.write(study.resolve("photos/2.jpg"), new byte[] {4});
    Thread.sleep(1100);
    assertEquals(0, run("backup", study, "--keep", "1,0,0"), printed);
    assertTrue(only(study.resolve(".daubline/backups")).toString().endsWith(".zip"));
    assertEquals(0, run("backup", study, "--list"));
    assertEquals(1, printed.lines().count(), printed);
    assertEquals(1, run("backup", study, "--keep", "1,2"));
    assertTrue(printed.contains("three numbers"), printed);
  }
}
