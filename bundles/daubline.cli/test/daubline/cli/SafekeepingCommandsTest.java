package daubline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.model.ModelFactory;
import daubline.model.Study;
import daubline.session.StudySession;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Backups and merging through the command line; data invented. */
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

  private void edit(Path where, Consumer<Study> change) throws Exception {
    try (StudySession session = StudySession.open(where)) {
      session.edit("work", () -> change.accept(session.study()));
      session.save();
    }
  }

  private Study read(Path where) throws Exception {
    try (StudySession session = StudySession.read(where)) {
      return session.study();
    }
  }

  private Path handedOver(Path from, String name) throws Exception {
    Path disk = Files.createDirectory(folder.resolve("stick-" + name));
    assertEquals(0, run("backup", from, "--to", disk), printed);
    return only(disk);
  }

  @Test
  void twoPeoplesCopiesGoToAndFro() throws Exception {
    Path theirs = folder.resolve("theirs");
    assertEquals(0, run("restore", handedOver(study, "1"), theirs), printed);
    edit(study, s -> {
      s.setQuestion("Which blast?");
      s.setNote("mine");
    });
    edit(theirs, s -> {
      s.setLicence("CC-BY-4.0");
      s.setNote("theirs");
      s.getPeople().add(ModelFactory.eINSTANCE.createPerson());
    });
    Path packet = handedOver(theirs, "2");
    assertEquals(1, run("merge", study, packet, "--apply"));
    assertTrue(printed.contains("base “”, mine “mine”, theirs “theirs”") && printed.contains("1 conflicts, 1 of them open") && printed.contains("nothing was changed"), printed);
    assertEquals(null, read(study).getLicence());
    assertEquals(0, run("merge", study, packet, "--theirs", "1"), printed);
    assertEquals("mine", read(study).getNote());
    assertEquals(0, run("merge", study, packet, "--prefer", "theirs", "--apply"), printed);
    assertTrue(printed.contains("the checks say"), printed);
    Study merged = read(study);
    assertEquals(java.util.List.of("theirs", "Which blast?", "CC-BY-4.0", 1), java.util.List.of(merged.getNote(), merged.getQuestion(), merged.getLicence(), merged.getPeople().size()));
    assertEquals(0, run("merge", theirs, handedOver(study, "3"), "--apply"), printed);
    assertTrue(printed.contains("0 conflicts"), printed);
    assertEquals("Which blast?", read(theirs).getQuestion());
    edit(theirs, s -> s.setNote("later"));
    assertEquals(0, run("merge", study, handedOver(theirs, "4"), "--apply"), printed);
    assertEquals("later", read(study).getNote());
  }

  @Test
  void whatIsNoCopyIsRefusedAndWithoutABaseAllThatDiffersIsListed() throws Exception {
    Path stranger = folder.resolve("stranger");
    assertEquals(0, run("new", stranger, "Other"), printed);
    assertEquals(1, run("merge", study, stranger));
    assertTrue(printed.contains("no copy of “Test”"), printed);
    Path theirs = folder.resolve("theirs");
    Files.createDirectories(theirs);
    Files.copy(study.resolve("study.xmi"), theirs.resolve("study.xmi"));
    edit(theirs, s -> s.setNote("theirs"));
    assertEquals(1, run("merge", study, theirs), printed);
    assertTrue(printed.contains("is not known") && printed.contains("1 conflicts"), printed);
    Path base = folder.resolve("base");
    Files.createDirectories(base);
    Files.copy(study.resolve("study.xmi"), base.resolve("study.xmi"));
    assertEquals(0, run("merge", study, theirs, "--base", base), printed);
    assertTrue(printed.contains("1 taken from theirs, 0 conflicts"), printed);
    assertEquals(1, run("merge", study, theirs, "--theirs", "4"));
    assertTrue(printed.contains("there is no conflict 4"), printed);
  }
}
