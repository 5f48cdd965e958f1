package daubline.publication;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Finding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder that several runs are written into. */
class StagingTest {

  @TempDir
  Path folder;

  private List<Finding> run(Map<String, String> files) throws IOException {
    try (Staging staging = new Staging(folder)) {
      for (Map.Entry<String, String> file : files.entrySet()) {
        staging.output().text(file.getKey(), file.getValue());
      }
      return staging.finish();
    }
  }

  @Test
  void aLaterRunReplacesAndRemovesWhatIsItsOwn() throws IOException {
    run(Map.of("a.txt", "1", "part/b.txt", "2"));
    assertEquals(List.of(), run(Map.of("a.txt", "3")));
    assertEquals("3", Files.readString(folder.resolve("a.txt")));
    assertFalse(Files.exists(folder.resolve("part")));
    assertFalse(Files.exists(folder.resolve(".unfinished")));
  }

  @Test
  void whatSomebodyChangedIsKept() throws IOException {
    run(Map.of("report.docx", "1", "part/b.txt", "2"));
    Files.writeString(folder.resolve("report.docx"), "with my words");
    Files.writeString(folder.resolve("part/b.txt"), "mine too");
    List<Finding> said = run(Map.of("report.docx", "3"));
    assertEquals(2, said.size(), said.toString());
    assertEquals("3", Files.readString(folder.resolve("report.docx")));
    assertEquals("with my words", Files.readString(folder.resolve("report.changed.docx")));
    assertEquals("mine too", Files.readString(folder.resolve("part/b.txt")));
    Files.writeString(folder.resolve("report.docx"), "again");
    run(Map.of("report.docx", "3"));
    assertEquals("again", Files.readString(folder.resolve("report.changed-2.docx")));
  }

  @Test
  void aRunThatFailsLeavesTheFolderAsItWas() throws IOException {
    run(Map.of("a.txt", "1"));
    try (Staging staging = new Staging(folder)) {
      staging.output().text("a.txt", "half");
    }
    assertEquals("1", Files.readString(folder.resolve("a.txt")));
    assertFalse(Files.exists(folder.resolve(".unfinished")));
  }

  @Test
  void aForgedListLeadsNowhereElse() throws IOException {
    Path outside = Files.writeString(folder.resolveSibling("outside-" + folder.getFileName() + ".txt"), "x");
    Files.writeString(folder.resolve(Checksums.NAME), DepositFile.hash(outside) + "  ../" + outside.getFileName() + "\nnonsense\n");
    run(Map.of("a.txt", "1"));
    assertTrue(Files.exists(outside));
    Files.delete(outside);
  }

  @Test
  void aFileInPlaceOfTheFolderIsRefused() throws IOException {
    Path file = Files.writeString(folder.resolve("taken"), "mine");
    assertThrows(IOException.class, () -> new Staging(file));
    assertEquals("mine", Files.readString(file));
  }
}
