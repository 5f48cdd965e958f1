package daubline.seeds;

import daubline.model.DataFile;
import daubline.model.Study;
import daubline.session.StudyException;
import daubline.session.StudySession;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** One seed study while it is written: its model and the files beside it. */
abstract class SeedStudy {

  private final Map<String, byte[]> files = new TreeMap<>();

  /** The name of its folder under seeds/. */
  abstract String folder();

  /** Its name as printed. */
  abstract String name();

  /** Fills the study. */
  abstract void fill(Study study);

  /** Adds a file to the study's folder. */
  final void file(String path, byte[] content) {
    files.put(path, content);
  }

  /** Adds a file to the study's folder and describes it. */
  final <T extends DataFile> T file(T data, String path, String mediaType, byte[] content) {
    file(path, content);
    data.setPath(path);
    data.setMediaType(mediaType);
    data.setBytes((long) content.length);
    data.setSha256(sha256(content));
    return data;
  }

  private static String sha256(byte[] content) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Writes the study into a folder of its own below another, in place of what stood there. */
  final void write(Path seeds) throws IOException, StudyException {
    Path draft = Files.createTempDirectory("seed");
    try (StudySession session = StudySession.create(draft.resolve(folder()), name())) {
      session.edit("Fill", () -> {
        session.study().setId("study-" + folder());
        fill(session.study());
        SeedIds.complete(session.study());
      });
      session.save();
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        Path target = session.folder().resolve(file.getKey());
        Files.createDirectories(target.getParent());
        Files.write(target, file.getValue());
      }
      delete(seeds.resolve(folder()));
      session.saveCopy(seeds.resolve(folder()));
    } finally {
      delete(draft);
    }
  }

  private static void delete(Path tree) throws IOException {
    if (Files.isDirectory(tree)) {
      try (Stream<Path> all = Files.walk(tree)) {
        for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(path);
        }
      }
    }
  }
}
