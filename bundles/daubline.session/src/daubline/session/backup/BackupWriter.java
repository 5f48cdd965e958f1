package daubline.session.backup;

import daubline.session.StudyException;
import daubline.session.StudyImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.LocalDateTime;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Writes a study into one file: its own files as they stand, and its data files from the disk. The file is written under
 * another name, forced to disk, read back and compared digest by digest, and only then named as a backup. Entries are sorted
 * and carry no time, so the same study makes the same bytes.
 */
public final class BackupWriter {

  private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);
  private static final String PRIVATE = ".daubline";

  private final StudyImage image;
  private final Work work;
  private final SortedMap<String, Path> dataFiles;
  private final Map<String, State> states = new TreeMap<>();
  private final Map<String, String> sums = new TreeMap<>();
  private long done;
  private long all;

  private BackupWriter(StudyImage image, boolean whole, Work work) throws IOException {
    this.image = image;
    this.work = work;
    dataFiles = whole ? dataFiles(image.folder()) : new TreeMap<>();
    all = image.files().values().stream().mapToLong(b -> b.length).sum();
    for (Map.Entry<String, Path> file : dataFiles.entrySet()) {
      State state = State.of(file.getValue());
      states.put(file.getKey(), state);
      all += state.size();
    }
  }

  /** By what it is noticed that another program wrote a file meanwhile. */
  private record State(long size, FileTime time) {
    static State of(Path file) throws IOException {
      return new State(Files.size(file), Files.getLastModifiedTime(file));
    }
  }

  /**
   * Writes a whole study for another disk, or to be handed over, and notes what was handed over.
   *
   * @param folder an existing folder outside the study
   * @throws StudyException when the folder is absent, read-only, full or inside the study, when a file changes while it is copied, or when what
   *     is read back differs; nothing is left in the folder then
   */
  public static Backup copy(StudyImage image, Path folder, LocalDateTime at, Work work) throws StudyException {
    Trouble.refuse(folder, image.folder());
    Backup made = write(image, folder, at, true, work);
    Bases.note(image, at);
    return made;
  }

  /**
   * Writes a backup into a folder that is there.
   *
   * @param whole whether photographs, logger and laboratory files go along
   */
  static Backup write(StudyImage image, Path folder, LocalDateTime at, boolean whole, Work work) throws StudyException {
    Backup backup = Backup.of(folder, String.valueOf(image.folder().getFileName()), at);
    Path beside = backup.file().resolveSibling("." + backup.file().getFileName() + ".writing");
    try {
      new BackupWriter(image, whole, work).write(beside);
      Files.move(beside, backup.file(), StandardCopyOption.REPLACE_EXISTING);
      return backup;
    } catch (IOException e) {
      throw Trouble.writing(folder, e);
    } finally {
      takeAway(beside);
    }
  }

  private static void takeAway(Path beside) {
    try {
      Files.deleteIfExists(beside);
    } catch (IOException e) {
      // the disk is gone; there is nothing to take away from it
    }
  }

  /** The data files of a study by their path relative to it: everything but its own files and what is private. */
  static SortedMap<String, Path> dataFiles(Path study) throws IOException {
    SortedMap<String, Path> files = new TreeMap<>();
    if (!Files.isDirectory(study)) {
      return files;
    }
    try (Stream<Path> found = Files.walk(study)) {
      found.filter(Files::isRegularFile).forEach(file -> {
        String relative = study.relativize(file).toString().replace('\\', '/');
        if (!relative.startsWith(PRIVATE + "/") && !StudyImage.isOwn(relative) && !relative.endsWith(".writing")
            && !relative.equals(Checksums.LIST) && !relative.equals(Lineage.LIST)) {
          files.put(relative, file);
        }
      });
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
    return files;
  }

  private void write(Path file) throws IOException, StudyException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
      OutputStream out = Channels.newOutputStream(channel);
      ZipOutputStream zip = new ZipOutputStream(out);
      for (String name : names()) {
        work.tell(name, done, 2 * all);
        put(zip, name);
      }
      refuseChanged();
      put(zip, Lineage.LIST, new ByteArrayInputStream(lineage()), Long.MAX_VALUE);
      put(zip, Checksums.LIST, new ByteArrayInputStream(Checksums.print(sums)), Long.MAX_VALUE);
      zip.finish();
      channel.force(true);
    }
    readBack(file);
  }

  private Set<String> names() {
    Set<String> names = new java.util.TreeSet<>(image.files().keySet());
    names.addAll(dataFiles.keySet());
    return names;
  }

  private byte[] lineage() throws IOException {
    Set<String> states = new LinkedHashSet<>(Lineage.of(image.folder()));
    states.add(image.digest());
    return Lineage.print(states);
  }

  private void put(ZipOutputStream zip, String name) throws IOException, StudyException {
    byte[] own = image.files().get(name);
    if (own != null) {
      put(zip, name, new ByteArrayInputStream(own), own.length);
      done += own.length;
      return;
    }
    try (InputStream in = Files.newInputStream(dataFiles.get(name))) {
      put(zip, name, in, Long.MAX_VALUE);
    } catch (NoSuchFileException e) {
      throw Trouble.changed(image.folder(), name);
    }
    done += states.get(name).size();
  }

  private void refuseChanged() throws IOException, StudyException {
    for (Map.Entry<String, Path> file : dataFiles.entrySet()) {
      if (!Files.exists(file.getValue()) || !State.of(file.getValue()).equals(states.get(file.getKey()))) {
        throw Trouble.changed(image.folder(), file.getKey());
      }
    }
  }

  private void put(ZipOutputStream zip, String name, InputStream in, long most) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(NO_TIME);
    zip.putNextEntry(entry);
    sums.put(name, Checksums.copy(in, zip, most));
    zip.closeEntry();
  }

  private void readBack(Path file) throws IOException, StudyException {
    try (BackupReader reader = BackupReader.open(file)) {
      reader.compare((what, part, whole) -> work.goesOn(what, all + part, 2 * all));
    }
  }
}
