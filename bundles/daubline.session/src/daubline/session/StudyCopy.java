package daubline.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;

/** Writes a complete copy of a study elsewhere: its state now, its data files as they are, and the states it came from, for merging. */
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
        boolean own = relative.startsWith(StudyFolder.PRIVATE) && !isOrigin(relative) || StudyImage.isOwn(relative);
        if (!own && !file.startsWith(target)) {
          Files.createDirectories(target.resolve(relative).getParent());
          Files.copy(file, target.resolve(relative));
        }
      }
    }
  }

  private static boolean isOrigin(String relative) {
    return relative.equals(StudyFolder.PRIVATE + "/lineage.txt") || relative.startsWith(StudyFolder.PRIVATE + "/bases/");
  }
}
