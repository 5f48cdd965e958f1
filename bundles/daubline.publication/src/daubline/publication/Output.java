package daubline.publication;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Set;

/** A folder that files are written into, and a list of them. */
final class Output {

  private final Path folder;
  private final Set<String> names = new LinkedHashSet<>();

  Output(Path folder) {
    this.folder = folder;
  }

  /** Opens a file to write; the caller closes it. */
  OutputStream file(String name) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    names.add(name);
    return new BufferedOutputStream(Files.newOutputStream(file));
  }

  /** Writes a text in UTF-8. */
  void text(String name, String text) throws IOException {
    try (OutputStream out = file(name)) {
      out.write(text.getBytes(StandardCharsets.UTF_8));
    }
  }

  /** The same folder's part of that name, with a list of its own. */
  Output part(String name) {
    return new Output(folder.resolve(name));
  }

  /** Counts the files of a part as files of this. */
  void add(String part, Output other) {
    other.names.forEach(name -> names.add(part + "/" + name));
  }

  Path folder() {
    return folder;
  }

  /** The names of the files, with / between folders, in the order in which they were written. */
  Set<String> names() {
    return Collections.unmodifiableSet(names);
  }
}
