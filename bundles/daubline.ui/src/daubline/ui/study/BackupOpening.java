package daubline.ui.study;

import daubline.session.backup.BackupReader;
import daubline.session.backup.Work;
import java.nio.file.Files;
import java.nio.file.Path;

/** Makes a study of a backup beside the person's other studies and opens it; what is open or lies there already stays as it is. */
public final class BackupOpening {

  private BackupOpening() {
  }

  /** Compares the digests of a backup, makes a study of it and opens that. */
  public static void open(Path backup) {
    Start.open(() -> restore(backup));
  }

  private static Path restore(Path backup) throws Exception {
    try (BackupReader reader = BackupReader.open(backup)) {
      String name = backup.getFileName().toString().replaceFirst("\\.zip$", "");
      Path folder = Seeds.home().resolve(name);
      for (int number = 2; Files.exists(folder); number++) {
        folder = Seeds.home().resolve(name + "-" + number);
      }
      Files.createDirectories(Seeds.home());
      reader.restore(folder, Work.UNWATCHED);
      return folder;
    }
  }
}
