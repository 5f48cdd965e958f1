package daubline.session.backup;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;

/** The files of a study that are not the study itself: photographs, logger and laboratory files. */
public final class DataFiles {

  private DataFiles() {
  }

  /** Those in a study's folder, by path relative to it. */
  public static SortedMap<String, Path> of(Path study) throws IOException {
    return BackupWriter.dataFiles(study);
  }

  /** The SHA-256 of a file in hexadecimal; empty when it cannot be read. */
  public static String sha256(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      return Checksums.copy(in, OutputStream.nullOutputStream(), Long.MAX_VALUE);
    } catch (IOException e) {
      return "";
    }
  }
}
