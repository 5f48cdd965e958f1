package daubline.publication;

import daubline.base.Finding;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * A folder that is written beside and taken over at the end, so that it holds the whole of this run or the whole of the
 * run before. Files that somebody changed since the run before are kept under another name; files that the run before
 * wrote and this one does not are removed, unless they were changed.
 */
final class Staging implements Closeable {

  private static final String BESIDE = ".unfinished";

  private final Path folder;
  private final Output output;
  private final List<Finding> findings = new ArrayList<>();

  Staging(Path folder) throws IOException {
    this.folder = folder;
    Path beside = folder.resolve(BESIDE);
    Files.createDirectories(folder);
    delete(beside);
    Files.createDirectory(beside);
    this.output = new Output(beside);
  }

  /** Where to write. */
  Output output() {
    return output;
  }

  /** Takes everything over; returns what was found of earlier files. */
  List<Finding> finish() throws IOException {
    Map<String, String> before = Checksums.read(folder);
    output.text(Checksums.NAME, Checksums.text(output));
    for (String name : output.names()) {
      Path to = folder.resolve(name);
      keepChanged(name, to, before.get(name));
      Files.createDirectories(to.getParent());
      Files.move(output.folder().resolve(name), to, StandardCopyOption.REPLACE_EXISTING);
    }
    removeStale(before);
    return findings;
  }

  private void keepChanged(String name, Path file, String written) throws IOException {
    if (!Files.exists(file) || name.equals(Checksums.NAME) || Files.isRegularFile(file) && isLike(file, output.folder().resolve(name), written)) {
      return;
    }
    int point = file.getFileName().toString().lastIndexOf('.');
    String plain = point > 0 ? file.getFileName().toString().substring(0, point) : file.getFileName().toString();
    String ending = point > 0 ? file.getFileName().toString().substring(point) : "";
    Path kept = file.resolveSibling(plain + ".changed" + ending);
    for (int n = 2; Files.exists(kept); n++) {
      kept = file.resolveSibling(plain + ".changed-" + n + ending);
    }
    Files.move(file, kept);
    findings.add(Finding.note("publish.kept", name, "it was changed since it was written, or is not of this tool; it is kept as " + kept.getFileName(),
        "take over from it what you need, then delete it"));
  }

  private static boolean isLike(Path file, Path next, String written) throws IOException {
    return Files.mismatch(file, next) < 0 || DepositFile.hash(file).equals(written);
  }

  private void removeStale(Map<String, String> before) throws IOException {
    for (Map.Entry<String, String> old : before.entrySet()) {
      Path file = folder.resolve(old.getKey());
      if (output.names().contains(old.getKey()) || !Files.isRegularFile(file)) {
        continue;
      }
      if (DepositFile.hash(file).equals(old.getValue())) {
        Files.delete(file);
        deleteIfEmpty(file.getParent());
      } else {
        findings.add(Finding.note("publish.stale", old.getKey(), "it is no part of this run any more, but was changed since it was written, so it is left",
            "delete it when you do not need it"));
      }
    }
  }

  private void deleteIfEmpty(Path emptied) throws IOException {
    if (!emptied.equals(folder)) {
      try (Stream<Path> content = Files.list(emptied)) {
        if (content.findAny().isPresent()) {
          return;
        }
      }
      Files.delete(emptied);
      deleteIfEmpty(emptied.getParent());
    }
  }

  /** Files below a part of the folder that this run has not written. */
  List<String> strangers(String part) throws IOException {
    TreeSet<String> strangers = new TreeSet<>();
    if (Files.isDirectory(folder.resolve(part))) {
      try (Stream<Path> files = Files.walk(folder.resolve(part))) {
        files.filter(Files::isRegularFile).map(f -> folder.relativize(f).toString().replace('\\', '/')).forEach(strangers::add);
      }
    }
    strangers.removeAll(output.names());
    return List.copyOf(strangers);
  }

  private static void delete(Path tree) throws IOException {
    if (Files.exists(tree)) {
      try (Stream<Path> files = Files.walk(tree)) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }

  /** Removes what was written beside; after {@link #finish} nothing is left there. */
  @Override
  public void close() throws IOException {
    delete(output.folder());
  }
}
