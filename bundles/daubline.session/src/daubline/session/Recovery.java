package daubline.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The unsaved changes that a session left behind when it ended without saving. */
public final class Recovery {

  private final StudyFolder folder;
  private final Map<String, byte[]> changed;
  private final List<String> removed;
  private final Instant time;

  private Recovery(StudyFolder folder, Map<String, byte[]> changed, List<String> removed, Instant time) {
    this.folder = folder;
    this.changed = changed;
    this.removed = removed;
    this.time = time;
  }

  /**
   * What can be recovered of a study.
   *
   * @return empty when the last session was closed in good order
   * @throws StudyException when the journal cannot be read
   */
  public static Optional<Recovery> of(Path studyFolder) throws StudyException {
    StudyFolder folder = new StudyFolder(studyFolder);
    Path journal = folder.file(Journal.FOLDER);
    Map<String, byte[]> changed = new LinkedHashMap<>();
    List<String> removed = new ArrayList<>();
    Instant time = Instant.EPOCH;
    try {
      for (Path file : files(journal)) {
        String relative = journal.relativize(file).toString().replace('\\', '/');
        FileTime modified = Files.getLastModifiedTime(file);
        time = modified.toInstant().isAfter(time) ? modified.toInstant() : time;
        if (relative.endsWith(Journal.REMOVED)) {
          removed.add(relative.substring(0, relative.length() - Journal.REMOVED.length()));
        } else {
          changed.put(relative, Files.readAllBytes(file));
        }
      }
    } catch (IOException e) {
      throw StudyDocument.unreachable(journal, e);
    }
    boolean nothing = changed.isEmpty() && removed.isEmpty();
    return nothing ? Optional.empty() : Optional.of(new Recovery(folder, changed, removed, time));
  }

  private static List<Path> files(Path journal) throws IOException {
    if (!Files.isDirectory(journal)) {
      return List.of();
    }
    try (Stream<Path> all = Files.walk(journal)) {
      return all.filter(Files::isRegularFile).filter(f -> !f.getFileName().toString().endsWith(".writing")).sorted().toList();
    }
  }

  static void deleteTree(Path root) throws IOException {
    if (Files.exists(root)) {
      try (Stream<Path> all = Files.walk(root)) {
        for (Path file : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }

  /** When the last change was kept. */
  public Instant time() {
    return time;
  }

  /** What differs from the saved study, file by file with the number of lines that differ. */
  public List<String> summary() throws StudyException {
    Map<String, byte[]> saved = StudyDocument.readFiles(folder);
    List<String> lines = new ArrayList<>();
    changed.forEach((file, content) -> lines.add(file + ": " + differingLines(saved.get(file), content) + " lines changed"));
    removed.forEach(file -> lines.add(file + ": taken away"));
    return lines;
  }

  private static long differingLines(byte[] before, byte[] after) {
    String[] now = new String(after, java.nio.charset.StandardCharsets.UTF_8).split("\n");
    if (before == null) {
      return now.length;
    }
    java.util.Set<String> then = java.util.Set.of(new String(before, java.nio.charset.StandardCharsets.UTF_8).lines().distinct().toArray(String[]::new));
    return Stream.of(now).filter(line -> !then.contains(line)).count();
  }

  /** The study with the unsaved changes in place. */
  StudyDocument load() throws StudyException {
    Map<String, byte[]> saved = StudyDocument.readFiles(folder);
    Map<String, byte[]> files = new LinkedHashMap<>(saved);
    files.putAll(changed);
    removed.forEach(files::remove);
    return StudyDocument.load(folder, saved, files);
  }
}
