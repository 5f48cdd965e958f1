package daubline.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;

/** Writes a complete copy of a study elsewhere: its state now, and its data files as they are. */
final class StudyCopy {

  private StudyCopy() {
  }

  static void write(StudyDocument document, Path target) throws IOException {
    for (Map.Entry<String, byte[]> file : document.files().entrySet()) {
      StudyFolder.writeAtomically(target.resolve(file.getKey()), file.getValue());
    }
    Path source = document.folder().root();
    try (Stream<Path> all = Files.walk(source)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        String relative = source.relativize(file).toString().replace('\\', '/');
        boolean own = relative.startsWith(StudyFolder.PRIVATE) || relative.equals(StudyFolder.STUDY_FILE)
            || relative.endsWith(".xmi") && (relative.startsWith(StudyFolder.SITES + "/") || relative.startsWith(StudyFolder.SERIES + "/"));
        if (!own && !file.startsWith(target)) {
          Files.createDirectories(target.resolve(relative).getParent());
          Files.copy(file, target.resolve(relative));
        }
      }
    }
  }
}
