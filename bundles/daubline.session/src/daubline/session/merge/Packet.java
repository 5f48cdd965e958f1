package daubline.session.merge;

import daubline.base.Finding;
import daubline.model.Study;
import daubline.session.StudyException;
import daubline.session.StudySession;
import daubline.session.backup.BackupReader;
import daubline.session.backup.Work;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Another person's copy of a study, from its folder or from a backup; a backup is laid out in a temporary folder until it is closed. */
public final class Packet implements AutoCloseable {

  private final Path source;
  private final Path temporary;
  private final StudySession session;

  private Packet(Path source, Path temporary, StudySession session) {
    this.source = source;
    this.temporary = temporary;
    this.session = session;
  }

  /**
   * Opens a copy to read it.
   *
   * @param source the folder of a study, its study.xmi, or a backup
   * @throws StudyException when it is none or damaged
   */
  public static Packet open(Path source) throws StudyException {
    Path given = source.endsWith("study.xmi") ? source.toAbsolutePath().getParent() : source;
    if (Files.isDirectory(given)) {
      return new Packet(given, null, StudySession.read(given));
    }
    Path temporary = null;
    try (BackupReader reader = BackupReader.open(given)) {
      temporary = Files.createTempDirectory("daubline-packet");
      reader.restore(temporary.resolve("study"), Work.UNWATCHED);
      Packet packet = new Packet(given, temporary, StudySession.read(temporary.resolve("study")));
      temporary = null;
      return packet;
    } catch (IOException e) {
      throw new StudyException(Finding.error("merge.space", String.valueOf(System.getProperty("java.io.tmpdir")), "the copy cannot be laid out: " + e.getMessage(),
          "make room on the disk of temporary files"), e);
    } finally {
      delete(temporary);
    }
  }

  /** What was opened. */
  public Path source() {
    return source;
  }

  /** The study; only to be read. */
  public Study study() {
    return session.study();
  }

  /** What was noticed while it was read. */
  public List<Finding> findings() {
    return session.findings();
  }

  /** The folder with its files. */
  public Path folder() {
    return session.folder();
  }

  @Override
  public void close() {
    session.close();
    delete(temporary);
  }

  private static void delete(Path root) {
    if (root == null) {
      return;
    }
    try (Stream<Path> all = Files.walk(root)) {
      for (Path file : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    } catch (IOException e) {
      // a temporary folder; the system clears it
      root.toFile().deleteOnExit();
    }
  }
}
