package daubline.publication;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A folder that files are written into, and a list of them. */
final class Output {

  private final Path folder;
  private final List<Path> files = new ArrayList<>();

  Output(Path folder) {
    this.folder = folder;
  }

  /** Opens a file to write; the caller closes it. */
  OutputStream file(String name) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    files.add(file);
    return new BufferedOutputStream(Files.newOutputStream(file));
  }

  /** Writes a text in UTF-8. */
  void text(String name, String text) throws IOException {
    try (OutputStream out = file(name)) {
      out.write(text.getBytes(StandardCharsets.UTF_8));
    }
  }

  Path folder() {
    return folder;
  }

  /** The files in the order in which they were written. */
  List<Path> files() {
    return List.copyOf(files);
  }
}
