package daubline.session.backup;

import daubline.session.StudyException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * Reads a backup: compares every file with its digest, and makes a study folder of it. A path that leads out of the folder, a
 * file that is not listed or one that holds more than it announces is refused before anything is written.
 */
public final class BackupReader implements AutoCloseable {

  private static final String STUDY = "study.xmi";

  private final Path place;
  private final ZipFile zip;
  private final Map<String, String> sums;

  private BackupReader(Path place, ZipFile zip) throws IOException, StudyException {
    this.place = place;
    this.zip = zip;
    ZipEntry list = zip.getEntry(Checksums.LIST);
    if (list == null) {
      throw Trouble.of("backup.none", place, "this file is no backup of a study: it holds no " + Checksums.LIST, "name a file that “backup” wrote");
    }
    try (InputStream in = zip.getInputStream(list)) {
      sums = Checksums.read(in.readAllBytes());
    }
  }

  /**
   * Opens a backup.
   *
   * @throws StudyException when it cannot be read or is none
   */
  public static BackupReader open(Path file) throws StudyException {
    ZipFile zip = null;
    try {
      zip = new ZipFile(file.toFile());
      BackupReader reader = new BackupReader(file, zip);
      reader.refuseStrangeNames();
      zip = null;
      return reader;
    } catch (IOException | RuntimeException e) {
      throw Trouble.broken(file, "it cannot be read as a backup: " + e.getMessage());
    } finally {
      closeQuietly(zip);
    }
  }

  private static void closeQuietly(ZipFile zip) {
    try {
      if (zip != null) {
        zip.close();
      }
    } catch (IOException e) {
      // it is only read
    }
  }

  /** Whether a file looks like a backup, by its name and its list. */
  public static boolean isBackup(Path file) {
    if (!file.toString().endsWith(Backup.ENDING)) {
      return false;
    }
    try (ZipFile zip = new ZipFile(file.toFile())) {
      return zip.getEntry(Checksums.LIST) != null && zip.getEntry(STUDY) != null;
    } catch (IOException e) {
      return false;
    }
  }

  private void refuseStrangeNames() throws StudyException {
    Set<String> seen = new TreeSet<>();
    for (ZipEntry entry : entries()) {
      String name = entry.getName();
      boolean strange = name.isEmpty() || name.startsWith("/") || name.contains("\\") || name.contains("\0") || name.matches("[A-Za-z]:.*")
          || List.of(name.split("/")).contains("..") || name.startsWith(".daubline");
      if (strange) {
        throw Trouble.broken(place, "it holds the path “" + name + "”, which leads out of a study");
      }
      if (!seen.add(name) || !sums.containsKey(name) && !name.equals(Checksums.LIST)) {
        throw Trouble.broken(place, "it holds “" + name + "”, which its list of digests does not name once");
      }
    }
    for (String listed : sums.keySet()) {
      if (!seen.contains(listed)) {
        throw Trouble.broken(place, "“" + listed + "” is missing from it");
      }
    }
    if (!seen.contains(STUDY)) {
      throw Trouble.of("backup.none", place, "this file is no backup of a study: it holds no " + STUDY, "name a file that “backup” wrote");
    }
  }

  private List<? extends ZipEntry> entries() {
    return zip.stream().filter(e -> !e.isDirectory()).toList();
  }

  /** The digests by file. */
  public Map<String, String> sums() {
    return new TreeMap<>(sums);
  }

  /** How many files of a study it holds. */
  public int files() {
    return (int) sums.keySet().stream().filter(f -> !f.equals(Lineage.LIST)).count();
  }

  /** The size of a file in bytes, or −1 when it is not there. */
  long size(String file) {
    ZipEntry entry = zip.getEntry(file);
    return entry == null ? -1 : entry.getSize();
  }

  /** The states that the study went through before, the state of this backup last. */
  public Set<String> lineage() throws StudyException {
    ZipEntry list = zip.getEntry(Lineage.LIST);
    try (InputStream in = list == null ? InputStream.nullInputStream() : zip.getInputStream(list)) {
      return Lineage.read(in.readAllBytes());
    } catch (IOException e) {
      throw Trouble.broken(place, "it cannot be read: " + e.getMessage());
    }
  }

  /**
   * Reads every file and compares its digest.
   *
   * @return the number of files that agree
   * @throws StudyException when one differs or cannot be read
   */
  public int compare(Work work) throws StudyException {
    return each(work, (name, in, size) -> Checksums.copy(in, OutputStream.nullOutputStream(), size));
  }

  private interface Taker {
    String take(String name, InputStream in, long size) throws IOException;
  }

  private int each(Work work, Taker taker) throws StudyException {
    long all = entries().stream().mapToLong(ZipEntry::getSize).sum();
    long done = 0;
    int files = 0;
    for (ZipEntry entry : entries()) {
      String name = entry.getName();
      work.tell(name, done, all);
      try (InputStream in = zip.getInputStream(entry)) {
        String sum = taker.take(name, in, entry.getSize());
        if (!name.equals(Checksums.LIST) && !sum.equals(sums.get(name))) {
          throw Trouble.broken(place, "“" + name + "” differs from what was written");
        }
      } catch (WritingFailed e) {
        throw Trouble.writing(e.folder, e.cause);
      } catch (IOException e) {
        throw Trouble.broken(place, "“" + name + "” cannot be read: " + e.getMessage());
      }
      done += entry.getSize();
      files += name.equals(Checksums.LIST) || name.equals(Lineage.LIST) ? 0 : 1;
    }
    return files;
  }

  /** A failure of the disk that is written to, told from one of the backup. */
  private static final class WritingFailed extends IOException {
    private static final long serialVersionUID = 1;
    private final transient Path folder;
    private final transient IOException cause;

    WritingFailed(Path folder, IOException cause) {
      super(cause);
      this.folder = folder;
      this.cause = cause;
    }
  }

  /**
   * Makes a study of the backup, in a folder that is empty or not there yet. It is written beside and renamed when whole.
   *
   * @return the number of files
   * @throws StudyException when the folder holds something, cannot be written, or the backup is damaged; nothing is left then
   */
  public int restore(Path folder, Work work) throws StudyException {
    Path target = folder.toAbsolutePath().normalize();
    Path beside = target.resolveSibling("." + target.getFileName() + ".restoring");
    try {
      refuseFilled(target);
      deleteTree(beside);
      Files.createDirectories(beside);
      int files = each(work, (name, in, size) -> write(beside, name, in, size));
      Lineage.note(beside, lineage());
      Files.deleteIfExists(target);
      Files.move(beside, target);
      Bases.note(target);
      return files;
    } catch (IOException e) {
      throw Trouble.writing(target.getParent(), e);
    } finally {
      deleteQuietly(beside);
    }
  }

  private static void refuseFilled(Path target) throws IOException, StudyException {
    if (Files.exists(target)) {
      boolean filled = !Files.isDirectory(target);
      if (!filled) {
        try (Stream<Path> content = Files.list(target)) {
          filled = content.findAny().isPresent();
        }
      }
      if (filled) {
        throw Trouble.of("backup.filled", target, "the folder holds files already", "choose an empty folder or a new name");
      }
    }
  }

  private String write(Path root, String name, InputStream in, long size) throws IOException {
    if (name.equals(Checksums.LIST) || name.equals(Lineage.LIST)) {
      return Checksums.copy(in, OutputStream.nullOutputStream(), size);
    }
    Path file = root.resolve(name).normalize();
    if (!file.startsWith(root)) {
      throw new IOException("leads out of the study");
    }
    OutputStream out;
    try {
      Files.createDirectories(file.getParent());
      out = Files.newOutputStream(file);
    } catch (IOException e) {
      throw new WritingFailed(root, e);
    }
    try (out) {
      return Checksums.copy(in, new FilterOut(out, root), size);
    }
  }

  /** Marks failures of writing. */
  private static final class FilterOut extends OutputStream {
    private final OutputStream out;
    private final Path root;

    FilterOut(OutputStream out, Path root) {
      this.out = out;
      this.root = root;
    }

    @Override
    public void write(int b) throws IOException {
      write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] block, int from, int count) throws IOException {
      try {
        out.write(block, from, count);
      } catch (IOException e) {
        throw new WritingFailed(root, e);
      }
    }
  }

  private static void deleteQuietly(Path tree) {
    try {
      deleteTree(tree);
    } catch (IOException e) {
      // the disk is gone; there is nothing to take away from it
    }
  }

  static void deleteTree(Path root) throws IOException {
    if (Files.exists(root)) {
      try (Stream<Path> all = Files.walk(root)) {
        for (Path file : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }

  @Override
  public void close() {
    closeQuietly(zip);
  }
}
