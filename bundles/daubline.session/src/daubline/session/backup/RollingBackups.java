package daubline.session.backup;

import daubline.session.StudyException;
import daubline.session.StudyImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The dated backups that are made by themselves, in the private folder of a study, when it changed since the last. */
public final class RollingBackups {

  static final String FOLDER = ".daubline/backups";

  private RollingBackups() {
  }

  /** Where the backups of a study lie. */
  public static Path folder(Path study) {
    return study.resolve(FOLDER);
  }

  /** The backups of a study, the oldest first. */
  public static List<Backup> of(Path study) throws StudyException {
    try {
      return Backup.in(folder(study), String.valueOf(study.getFileName()));
    } catch (IOException e) {
      throw Trouble.writing(folder(study), e);
    }
  }

  /**
   * Makes a backup when the study changed since the last, then takes those away that the rule does not keep.
   *
   * @param whole whether photographs, logger and laboratory files go along
   * @return the backup made; empty when nothing changed
   */
  public static Optional<Backup> roll(StudyImage image, KeepRule rule, boolean whole, LocalDateTime at, Work work) throws StudyException {
    List<Backup> before = of(image.folder());
    try {
      if (!before.isEmpty() && isSame(image, before.get(before.size() - 1).file(), whole)) {
        return Optional.empty();
      }
      Files.createDirectories(folder(image.folder()));
      Backup made = BackupWriter.write(image, folder(image.folder()), at, whole, work);
      Lineage.note(image.folder(), List.of(image.digest()));
      for (Backup old : rule.superfluous(of(image.folder()))) {
        Files.deleteIfExists(old.file());
      }
      return Optional.of(made);
    } catch (IOException e) {
      throw Trouble.writing(image.folder(), e);
    }
  }

  /** Whether a backup holds the study as it stands: its own files by digest, its data files by name and size. A damaged one does not. */
  private static boolean isSame(StudyImage image, Path zip, boolean whole) throws IOException {
    try (BackupReader reader = BackupReader.open(zip)) {
      Map<String, String> then = reader.sums();
      then.remove(Lineage.LIST);
      Map<String, String> now = new TreeMap<>();
      image.files().forEach((file, content) -> now.put(file, Checksums.of(content)));
      if (whole) {
        for (Map.Entry<String, Path> data : BackupWriter.dataFiles(image.folder()).entrySet()) {
          boolean same = reader.size(data.getKey()) == Files.size(data.getValue());
          now.put(data.getKey(), same ? then.getOrDefault(data.getKey(), "") : "");
        }
      }
      return now.equals(then);
    } catch (StudyException e) {
      return false;
    }
  }
}
