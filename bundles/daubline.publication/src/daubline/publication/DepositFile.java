package daubline.publication;

import daubline.analysis.deposit.Rows;
import daubline.base.Finding;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A file of the study as delivered.
 *
 * @param id its id
 * @param path its path in the study's folder
 * @param sha256 the checksum that the study keeps, or empty
 * @param mediaType its media type, or empty
 * @param kind what it is
 * @param caption its caption
 * @param rights who holds the rights
 * @param capturedAt when it was taken
 */
record DepositFile(String id, String path, String sha256, String mediaType, String kind, String caption, String rights, String capturedAt) {

  private static final int BUFFER = 1 << 16;

  /** The files that the public rows of a study name. */
  static List<DepositFile> of(List<Rows> tables) {
    List<DepositFile> files = new ArrayList<>();
    for (Rows table : tables) {
      if (table.name().equals("data-file") || table.name().equals("logger-file")) {
        table.rows().forEach(row -> files.add(new DepositFile(cell(table, row, "id"), cell(table, row, "path"), cell(table, row, "sha256"),
            cell(table, row, "media_type"), cell(table, row, "kind"), cell(table, row, "caption"), cell(table, row, "rights"), cell(table, row, "captured_at"))));
      }
    }
    return files;
  }

  private static String cell(Rows table, List<String> row, String column) {
    return table.column(column).map(row::get).orElse("");
  }

  /** Where it stands in the deposit: pictures below media, everything else below raw. */
  String deposited() {
    boolean picture = mediaType.startsWith("image") || mediaType.startsWith("video") || kind.toLowerCase(Locale.ROOT).startsWith("photo");
    return (picture ? "media/" : "raw/") + path;
  }

  /** What keeps it from being copied; empty when it can be. */
  Optional<Finding> obstacle(Path study) throws IOException {
    Path file = path.indexOf('\0') >= 0 ? study.getRoot() : study.resolve(path).normalize();
    if (path.isBlank() || !file.startsWith(study.normalize())) {
      return Optional.of(Finding.error("deposit.path", path, "it is no path of a file in the study's folder", "move the file into the study and name it by its relative path"));
    }
    if (!Files.isRegularFile(file)) {
      return Optional.of(Finding.error("deposit.missing", path, "the file is not there", "put it back, or delete its entry in the study"));
    }
    if (!sha256.isEmpty() && !sha256.equalsIgnoreCase(hash(file))) {
      return Optional.of(Finding.warning("deposit.changed", path, "the file differs from the one that was entered",
          "check which is right; the deposit holds it as it is now"));
    }
    return Optional.empty();
  }

  /** SHA-256 of a file in lower-case hexadecimal digits. */
  static String hash(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      byte[] buffer = new byte[BUFFER];
      for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
        digest.update(buffer, 0, n);
      }
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("This Java has no SHA-256", e);
    }
  }
}
