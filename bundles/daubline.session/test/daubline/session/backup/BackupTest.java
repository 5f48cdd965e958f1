package daubline.session.backup;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import daubline.session.StudyException;
import daubline.session.StudySession;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Backups are whole and the same or they are not there; what was invented is the study. */
class BackupTest {

  private static final LocalDateTime AT = LocalDateTime.of(2024, 5, 1, 12, 0);

  @TempDir
  Path temporary;
  private Path study;
  private Path disk;

  @BeforeEach
  void aStudyWithFiles() throws Exception {
    study = temporary.resolve("valley");
    disk = Files.createDirectory(temporary.resolve("disk"));
    try (StudySession session = StudySession.create(study, "Valley")) {
      session.edit("question", () -> session.study().setQuestion("Which blast?"));
      session.save();
    }
    Files.createDirectories(study.resolve("photos/über"));
    byte[] photo = new byte[300_000];
    new Random(3).nextBytes(photo);
    Files.write(study.resolve("photos/über/Öfen 1.jpg"), photo);
    Files.writeString(study.resolve("logs"), "t;T\n0;20\n");
  }

  private static Map<String, byte[]> content(Path root) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(root)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        String relative = root.relativize(file).toString();
        if (!relative.startsWith(".daubline")) {
          files.put(relative, Files.readAllBytes(file));
        }
      }
    }
    return files;
  }

  private static void assertSame(Map<String, byte[]> wanted, Map<String, byte[]> found) {
    assertEquals(wanted.keySet(), found.keySet());
    wanted.forEach((file, bytes) -> assertArrayEquals(bytes, found.get(file), file));
  }

  private Backup copy(LocalDateTime at, Work work) throws StudyException {
    try (StudySession session = StudySession.read(study)) {
      return BackupWriter.copy(session.image(), disk, at, work);
    }
  }

  private List<Path> onDisk() throws IOException {
    try (Stream<Path> files = Files.list(disk)) {
      return files.toList();
    }
  }

  @Test
  void aCopyComesBackByteForByteAndIsAStudyAgain() throws Exception {
    Backup backup = copy(AT, Work.UNWATCHED);
    assertEquals("valley-2024-05-01-120000.zip", backup.file().getFileName().toString());
    Path back = temporary.resolve("back");
    try (BackupReader reader = BackupReader.open(backup.file())) {
      assertEquals(3, reader.restore(back, Work.UNWATCHED));
    }
    assertSame(content(study), content(back));
    try (StudySession session = StudySession.read(back)) {
      assertEquals("Which blast?", session.study().getQuestion());
    }
  }

  @Test
  void theSameStudyMakesTheSameBytes() throws Exception {
    Files.createDirectories(study.resolve(".daubline"));
    byte[] first = Files.readAllBytes(copy(AT, Work.UNWATCHED).file());
    Files.setLastModifiedTime(study.resolve("logs"), java.nio.file.attribute.FileTime.fromMillis(0));
    assertArrayEquals(first, Files.readAllBytes(copy(AT.plusDays(3), Work.UNWATCHED).file()));
  }

  @Test
  void stoppedAnywhereLeavesNothing() throws Exception {
    int[] told = new int[1];
    copy(AT, (what, done, all) -> ++told[0] > 0);
    for (Path file : onDisk()) {
      Files.delete(file);
    }
    assertTrue(told[0] > 5, "progress was told " + told[0] + " times");
    for (int stop = 1; stop <= told[0]; stop++) {
      int[] left = {stop};
      assertThrows(CancellationException.class, () -> copy(AT, (what, done, all) -> --left[0] > 0));
      assertEquals(List.of(), onDisk());
    }
  }

  @Test
  void stoppedRestoringLeavesNothing() throws Exception {
    Backup backup = copy(AT, Work.UNWATCHED);
    for (int stop = 1; stop <= 4; stop++) {
      int[] left = {stop};
      try (BackupReader reader = BackupReader.open(backup.file())) {
        assertThrows(CancellationException.class, () -> reader.restore(temporary.resolve("half"), (what, done, all) -> --left[0] > 0));
      }
    }
    try (Stream<Path> files = Files.list(temporary)) {
      assertEquals(List.of("disk", "valley"), files.map(f -> f.getFileName().toString()).sorted().toList());
    }
  }

  @Test
  void aFileThatChangesMeanwhileIsSaidAndNothingStays() throws Exception {
    Path log = study.resolve("logs");
    try (StudySession session = StudySession.read(study)) {
      StudyException e = assertThrows(StudyException.class, () -> BackupWriter.copy(session.image(), disk, AT, (what, done, all) -> {
        if (what.startsWith("photos")) {
          grow(log);
        }
        return true;
      }));
      assertEquals("backup.changed", e.finding().code());
      assertTrue(e.finding().where().endsWith("logs"), e.finding().where());
      assertEquals(List.of(), onDisk());
      assertThrows(StudyException.class, () -> BackupWriter.copy(session.image(), disk, AT, (what, done, all) -> {
        return !what.startsWith("photos") || log.toFile().delete();
      }));
      assertEquals(List.of(), onDisk());
    }
  }

  private static void grow(Path file) {
    try {
      Files.writeString(file, Files.readString(file) + "1;30\n");
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void aDiskThatIsAbsentLockedOrTheStudyItselfIsSaid() throws Exception {
    try (StudySession session = StudySession.read(study)) {
      assertEquals("backup.absent", refused(session, temporary.resolve("nowhere")));
      assertEquals("backup.inside", refused(session, study.resolve("photos")));
      assertTrue(disk.toFile().setWritable(false));
      assumeTrue(!Files.isWritable(disk), "this user may write everywhere");
      assertEquals("backup.readonly", refused(session, disk));
      assertTrue(disk.toFile().setWritable(true));
    }
  }

  private String refused(StudySession session, Path folder) {
    return assertThrows(StudyException.class, () -> BackupWriter.copy(session.image(), folder, AT, Work.UNWATCHED)).finding().code();
  }

  @Test
  void aFullDiskIsSaid() throws Exception {
    StudyException full = Trouble.writing(disk, new IOException("No space left on device"));
    assertEquals("backup.full", full.finding().code());
    Path tiny = Path.of("/dev/full");
    assumeTrue(Files.exists(tiny));
    IOException real = assertThrows(IOException.class, () -> {
      try (OutputStream out = Files.newOutputStream(tiny)) {
        out.write(new byte[100]);
      }
    });
    assertEquals("backup.full", Trouble.writing(disk, real).finding().code());
  }

  @Test
  void oneTurnedByteIsFound() throws Exception {
    Backup backup = copy(AT, Work.UNWATCHED);
    byte[] whole = Files.readAllBytes(backup.file());
    Random random = new Random(11);
    int found = 0;
    for (int i = 0; i < 40; i++) {
      byte[] turned = whole.clone();
      turned[2000 + random.nextInt(290_000)] ^= 0x10;
      Files.write(backup.file(), turned);
      try (BackupReader reader = BackupReader.open(backup.file())) {
        reader.compare(Work.UNWATCHED);
      } catch (StudyException e) {
        assertEquals("backup.broken", e.finding().code());
        found++;
      }
    }
    assertEquals(40, found);
  }

  @Test
  void pathsThatLeadOutAreRefusedBeforeAnythingIsWritten() throws Exception {
    for (String name : List.of("../evil.txt", "/tmp/evil.txt", "a/../../evil.txt", "C:evil.txt", "..\\evil.txt", ".daubline/journal/study.xmi")) {
      Path zip = disk.resolve("evil.zip");
      Map<String, String> sums = new TreeMap<>();
      try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(zip))) {
        for (String entry : List.of("study.xmi", name)) {
          out.putNextEntry(new ZipEntry(entry));
          out.write(entry.getBytes());
          sums.put(entry, Checksums.of(entry.getBytes()));
        }
        out.putNextEntry(new ZipEntry(Checksums.LIST));
        out.write(Checksums.print(sums));
      }
      assertEquals("backup.broken", assertThrows(StudyException.class, () -> BackupReader.open(zip).close()).finding().code(), name);
    }
    assertFalse(Files.exists(temporary.resolve("evil.txt")));
  }

  @Test
  void whatIsNoBackupIsSaid() throws Exception {
    Path other = disk.resolve("other.zip");
    try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(other))) {
      out.putNextEntry(new ZipEntry("readme.txt"));
    }
    assertEquals("backup.none", assertThrows(StudyException.class, () -> BackupReader.open(other).close()).finding().code());
    Files.writeString(other, "no zip");
    assertEquals("backup.broken", assertThrows(StudyException.class, () -> BackupReader.open(other).close()).finding().code());
    assertFalse(BackupReader.isBackup(other));
  }

  @Test
  void rollingBackupsAreMadeWhenSomethingChanged() throws Exception {
    try (StudySession session = StudySession.open(study)) {
      assertTrue(RollingBackups.roll(session.image(), KeepRule.STANDARD, true, AT, Work.UNWATCHED).isPresent());
      assertTrue(RollingBackups.roll(session.image(), KeepRule.STANDARD, true, AT.plusHours(1), Work.UNWATCHED).isEmpty());
      session.edit("question", () -> session.study().setQuestion("Which clay?"));
      assertTrue(RollingBackups.roll(session.image(), KeepRule.STANDARD, true, AT.plusHours(2), Work.UNWATCHED).isPresent());
      Files.writeString(study.resolve("logs"), "t;T\n0;20\n1;21\n");
      assertTrue(RollingBackups.roll(session.image(), KeepRule.STANDARD, true, AT.plusDays(1), Work.UNWATCHED).isPresent());
      assertEquals(List.of(AT.plusHours(2), AT.plusDays(1)), RollingBackups.of(study).stream().map(Backup::at).toList());
    }
  }

  @Test
  void theRuleKeepsTheNewestOfDaysWeeksAndMonths() {
    List<Backup> all = new ArrayList<>();
    for (LocalDate day = LocalDate.of(2023, 1, 1); !day.isAfter(LocalDate.of(2023, 12, 31)); day = day.plusDays(1)) {
      all.add(new Backup(Path.of("m" + day), day.atTime(9, 0)));
      all.add(new Backup(Path.of("e" + day), day.atTime(17, 0)));
    }
    KeepRule rule = new KeepRule(3, 2, 2);
    List<Backup> kept = new ArrayList<>(all);
    kept.removeAll(rule.superfluous(all));
    // 31 December 2023 was a Sunday: the last of the week 25–31, so it stands for day, week and month
    assertEquals(Stream.of("2023-11-30", "2023-12-24", "2023-12-29", "2023-12-30", "2023-12-31").map(d -> Path.of("e" + d)).toList(),
        kept.stream().map(Backup::file).toList());
    assertEquals(all.size() - 1, new KeepRule(0, 0, 0).superfluous(all).size());
    assertThrows(IllegalArgumentException.class, () -> new KeepRule(-1, 0, 0));
    assertTrue(rule.superfluous(List.of()).isEmpty());
    assertTrue(Arrays.asList(rule.superfluous(all).toArray()).size() > 700);
  }

  @Test
  void otherFilesInTheFolderAreLeftAlone() throws Exception {
    Files.writeString(disk.resolve("valley-plan.zip"), "x");
    Files.writeString(disk.resolve("valley-2-2024-05-01-120000.zip"), "x");
    Files.writeString(disk.resolve("valley-2024-13-01-120000.zip"), "x");
    assertEquals(List.of(), Backup.in(disk, "valley"));
  }

  @Test
  void twoCopiesFindWhatBothBeganFrom() throws Exception {
    Backup handed = copy(AT, Work.UNWATCHED);
    Path theirs = temporary.resolve("theirs");
    try (BackupReader reader = BackupReader.open(handed.file())) {
      reader.restore(theirs, Work.UNWATCHED);
    }
    for (Path folder : List.of(study, theirs)) {
      try (StudySession session = StudySession.open(folder)) {
        session.edit("note", () -> session.study().setNote("by " + folder.getFileName()));
        session.save();
        RollingBackups.roll(session.image(), KeepRule.STANDARD, true, AT.plusDays(2), Work.UNWATCHED);
      }
    }
    Path base = Bases.common(study, theirs).orElseThrow();
    Path read = temporary.resolve("base");
    try (BackupReader reader = BackupReader.open(base)) {
      reader.restore(read, Work.UNWATCHED);
    }
    try (StudySession session = StudySession.read(read)) {
      assertEquals(null, session.study().getNote());
    }
    Path stranger = temporary.resolve("stranger");
    StudySession.create(stranger, "Other").close();
    assertTrue(Bases.common(study, stranger).isEmpty());
  }
}
