package daubline.session;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.stream.Stream;

/**
 * The files of a study folder: {@code study.xmi}, {@code sites/*.xmi} and {@code series/*.xmi} are the study itself;
 * {@code logs/}, {@code photos/} and {@code lab/} hold files as delivered.
 */
final class StudyFolder {

  static final String STUDY_FILE = "study.xmi";
  static final String SITES = "sites";
  static final String SERIES = "series";
  static final String PRIVATE = ".daubline";

  private final Path root;

  StudyFolder(Path root) {
    this.root = root.toAbsolutePath().normalize();
  }

  Path root() {
    return root;
  }

  Path file(String relative) {
    return root.resolve(relative);
  }

  boolean holdsStudy() {
    return Files.isRegularFile(file(STUDY_FILE));
  }

  /** The study's own files, relative with forward slashes, in a fixed order. */
  List<String> modelFiles() throws IOException {
    try (Stream<Path> all = Stream.concat(list(SITES), list(SERIES))) {
      List<String> parts = all.map(p -> root.relativize(p).toString().replace('\\', '/')).sorted().toList();
      return Stream.concat(holdsStudy() ? Stream.of(STUDY_FILE) : Stream.empty(), parts.stream()).toList();
    }
  }

  private Stream<Path> list(String folder) throws IOException {
    Path dir = file(folder);
    if (!Files.isDirectory(dir)) {
      return Stream.empty();
    }
    return Files.list(dir).filter(p -> p.getFileName().toString().endsWith(".xmi"));
  }

  /** Writes beside, forces to disk and renames, so that a reader sees the old file or the new one, never half of one. */
  static void writeAtomically(Path file, byte[] content) throws IOException {
    Files.createDirectories(file.getParent());
    Path beside = file.resolveSibling("." + file.getFileName() + ".writing");
    try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
      ByteBuffer buffer = ByteBuffer.wrap(content);
      while (buffer.hasRemaining()) {
        channel.write(buffer);
      }
      channel.force(true);
    }
    try {
      Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
