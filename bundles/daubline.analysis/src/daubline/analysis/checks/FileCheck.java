package daubline.analysis.checks;

import daubline.base.Finding;
import daubline.model.DataFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Data files: there, inside the study, and unchanged since they were delivered. */
final class FileCheck implements Check {

  @Override
  public String id() {
    return "file";
  }

  @Override
  public String description() {
    return "Logger, laboratory and picture files that are missing, outside the study, or changed since they were delivered.";
  }

  @Override
  public void run(CheckedStudy study) {
    study.each(DataFile.class, file -> check(study, file));
  }

  private void check(CheckedStudy study, DataFile file) {
    if (file.getPath() == null || file.getPath().isBlank()) {
      study.report(Finding.warning("file.path", "", "no file is named", "choose the file"), file, null);
      return;
    }
    try {
      Path path = study.folder().resolve(file.getPath()).normalize();
      if (!path.startsWith(study.folder())) {
        study.report(Finding.warning("file.outside", "", file.getPath() + " lies outside the study", "copy it into the study's folder"), file, null);
      } else if (!Files.isRegularFile(path)) {
        study.report(Finding.warning("file.missing", "", file.getPath() + " is not there", "put it back, or choose where it is now"), file, null);
      } else if (file.getSha256() != null && !file.getSha256().equalsIgnoreCase(digest(path))) {
        study.report(Finding.warning("file.changed", "", file.getPath() + " is no longer what was delivered",
            "restore the delivered file; keep an edited one beside it under another name"), file, null);
      }
    } catch (InvalidPathException | IOException e) {
      study.report(Finding.warning("file.unreadable", "", file.getPath() + " cannot be read: " + e.getMessage(), "check the name and the rights of the file"), file, null);
    }
  }

  private static String digest(Path path) throws IOException {
    try (InputStream in = Files.newInputStream(path)) {
      DigestInputStream digesting = new DigestInputStream(in, MessageDigest.getInstance("SHA-256"));
      digesting.transferTo(java.io.OutputStream.nullOutputStream());
      return HexFormat.of().formatHex(digesting.getMessageDigest().digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
