package daubline.session.backup;

import daubline.session.StudyException;
import daubline.session.StudyImage;
import daubline.session.StudySession;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The states in which a study was handed over or taken over, without its data files: what two copies have both begun from. */
public final class Bases {

  private static final String FOLDER = ".daubline/bases";
  private static final int MOST = 20;

  private Bases() {
  }

  /** Keeps a state that is handed over; a study that cannot be written keeps none. */
  public static void note(StudyImage image, LocalDateTime at) throws StudyException {
    Path folder = image.folder().resolve(FOLDER);
    if (!Files.isWritable(image.folder())) {
      return;
    }
    try {
      Files.createDirectories(folder);
      Lineage.note(image.folder(), List.of(image.digest()));
      BackupWriter.write(image, folder, at, false, Work.UNWATCHED);
      List<Path> all = zips(folder);
      for (Path old : all.subList(0, Math.max(0, all.size() - MOST))) {
        Files.delete(old);
      }
    } catch (IOException e) {
      throw Trouble.writing(folder, e);
    }
  }

  /** Keeps the state of a study that was just made of a backup. */
  static void note(Path study) throws StudyException {
    try (StudySession session = StudySession.read(study)) {
      note(session.image(), LocalDateTime.now());
    }
  }

  /** Notes in one study the states that another went through, after that was merged into it, and keeps the last as a base. */
  public static void adopt(Path mine, Path theirs) throws StudyException {
    try {
      Lineage.note(mine, Lineage.of(theirs));
      List<Path> last = zips(theirs.resolve(FOLDER));
      if (!last.isEmpty()) {
        Path newest = last.get(last.size() - 1);
        Files.createDirectories(mine.resolve(FOLDER));
        Files.copy(newest, mine.resolve(FOLDER).resolve(newest.getFileName()), StandardCopyOption.REPLACE_EXISTING);
      }
    } catch (IOException e) {
      throw Trouble.writing(mine, e);
    }
  }

  private static List<Path> zips(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(Backup.ENDING)).sorted(java.util.Comparator.comparing(f -> f.getFileName().toString())).toList();
    }
  }

  /**
   * The newest kept state that two copies both went through.
   *
   * @return the file of that state; empty when none is kept
   */
  public static Optional<Path> common(Path mine, Path theirs) throws StudyException {
    try {
      Set<String> both = new HashSet<>(states(mine));
      both.retainAll(states(theirs));
      List<Path> candidates = new ArrayList<>();
      for (Path study : List.of(mine, theirs)) {
        candidates.addAll(zips(study.resolve(FOLDER)));
        candidates.addAll(zips(study.resolve(RollingBackups.FOLDER)));
      }
      List<String> order = List.copyOf(Lineage.of(mine));
      Path best = null;
      int bestAt = -1;
      for (Path candidate : candidates) {
        String state = state(candidate);
        if (both.contains(state) && order.indexOf(state) >= bestAt) {
          best = candidate;
          bestAt = order.indexOf(state);
        }
      }
      return Optional.ofNullable(best);
    } catch (IOException e) {
      throw Trouble.writing(mine, e);
    }
  }

  private static Set<String> states(Path study) throws IOException {
    return Lineage.of(study);
  }

  private static String state(Path zip) {
    try (BackupReader reader = BackupReader.open(zip)) {
      List<String> lineage = List.copyOf(reader.lineage());
      return lineage.isEmpty() ? "" : lineage.get(lineage.size() - 1);
    } catch (StudyException e) {
      return "";
    }
  }
}
