package daubline.intake;

import daubline.base.Finding;
import daubline.model.DataFile;
import daubline.model.Study;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A file as delivered, kept in the folder of a study under its own name; a second file of that name with another content
 * gets a number behind it.
 */
public final class KeptFile {

  private static final Map<String, String> MEDIA_TYPES = Map.ofEntries(Map.entry("csv", "text/csv"), Map.entry("tsv", "text/tab-separated-values"),
      Map.entry("txt", "text/plain"), Map.entry("xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"),
      Map.entry("bib", "application/x-bibtex"), Map.entry("ris", "application/x-research-info-systems"), Map.entry("jpg", "image/jpeg"),
      Map.entry("jpeg", "image/jpeg"), Map.entry("png", "image/png"), Map.entry("tif", "image/tiff"), Map.entry("tiff", "image/tiff"),
      Map.entry("gif", "image/gif"), Map.entry("bmp", "image/bmp"), Map.entry("pdf", "application/pdf"));
  /** What is not known by its name is said to be no more than bytes. */
  private static final String UNKNOWN = "application/octet-stream";

  private final byte[] content;
  private final String sha256;
  private final String path;
  private final Path target;
  private final boolean there;

  private KeptFile(byte[] content, String sha256, String path, Path target, boolean there) {
    this.content = content;
    this.sha256 = sha256;
    this.path = path;
    this.target = target;
    this.there = there;
  }

  /**
   * Finds the place of a file in a study folder; writes nothing yet.
   *
   * @param folder the study's folder
   * @param subfolder such as lab or logs
   * @param name the file's own name
   */
  public static KeptFile of(Path folder, String subfolder, String name, byte[] content) throws IOException {
    String safe = name.replaceAll("[^\\p{L}\\p{N}._ -]", "_");
    int dot = safe.lastIndexOf('.') > 0 ? safe.lastIndexOf('.') : safe.length();
    for (int i = 1;; i++) {
      String numbered = i == 1 ? safe : safe.substring(0, dot) + "-" + i + safe.substring(dot);
      Path target = folder.resolve(subfolder).resolve(numbered);
      boolean there = Files.exists(target);
      if (!there || Files.size(target) == content.length && Arrays.equals(Files.readAllBytes(target), content)) {
        return new KeptFile(content, digest(content), subfolder + "/" + numbered, target, there);
      }
    }
  }

  /** The SHA-256 of a content, as hexadecimal digits. */
  public static String digest(byte[] content) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Its checksum. */
  public String sha256() {
    return sha256;
  }

  /** Its path in the study's folder, with forward slashes. */
  public String path() {
    return path;
  }

  /** Writes it, unless it is there already. */
  public void write() throws IntakeException {
    try {
      if (!there) {
        Files.createDirectories(target.getParent());
        Files.write(target, content, StandardOpenOption.CREATE_NEW);
      }
    } catch (IOException e) {
      throw new IntakeException(List.of(Finding.error("file.keep", target.toString(),
          "the file cannot be kept in the study", "check that the study's folder may be written and the disk is not full")));
    }
  }

  /** Takes it away again when this import wrote it and then failed. */
  public void takeBack() {
    try {
      if (!there) {
        Files.deleteIfExists(target);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The entry of a study for a file of this content. */
  public Optional<DataFile> entry(Study study) {
    return study.getFiles().stream().filter(f -> sha256.equals(f.getSha256())).findFirst();
  }

  /** Describes it in an entry. */
  public void describe(DataFile entry, String kind) {
    entry.setName(target.getFileName().toString());
    entry.setPath(path);
    entry.setSha256(sha256);
    entry.setBytes((long) content.length);
    entry.setKind(kind);
    entry.setMediaType(MEDIA_TYPES.getOrDefault(path.substring(path.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT), UNKNOWN));
  }
}
