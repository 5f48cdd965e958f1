package daubline.session.backup;

import daubline.base.Finding;
import daubline.session.StudyException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** What can go wrong with a backup, in words. */
final class Trouble {

  private static final long NEXT_TO_NOTHING = 1 << 20;

  private Trouble() {
  }

  static StudyException of(String code, Path where, String what, String remedy) {
    return new StudyException(Finding.error(code, where.toString(), what, remedy));
  }

  /** Refuses a folder into which nothing can be written, before anything is done. */
  static void refuse(Path folder, Path study) throws StudyException {
    Path target = folder.toAbsolutePath().normalize();
    if (!Files.isDirectory(target)) {
      throw of("backup.absent", folder, "this folder is not there", "plug the disk in and wait until it is shown, or make the folder");
    }
    if (study != null && target.startsWith(study.toAbsolutePath().normalize())) {
      throw of("backup.inside", folder, "this folder lies inside the study", "choose a folder outside, best on another disk");
    }
    if (!Files.isWritable(target)) {
      throw of("backup.readonly", folder, "this folder cannot be written", "see whether the disk is locked by its switch or mounted to read only, or choose another");
    }
  }

  /** What a failed writing means. */
  static StudyException writing(Path folder, IOException e) {
    if (isFull(folder, e)) {
      return new StudyException(Finding.error("backup.full", folder.toString(), "the disk is full; the copy was taken away again",
          "make room or take another disk; the study itself is unharmed"), e);
    }
    if (!Files.isDirectory(folder)) {
      return new StudyException(Finding.error("backup.absent", folder.toString(), "the disk went away while the copy was written",
          "plug it in again and copy once more; the study itself is unharmed"), e);
    }
    return new StudyException(Finding.error("backup.failed", folder.toString(), "the file system says: " + e.getClass().getSimpleName() + " " + e.getMessage(),
        "see whether the disk may be written and is in order; the study itself is unharmed"), e);
  }

  private static boolean isFull(Path folder, IOException e) {
    String message = String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT);
    if (message.contains("no space left") || message.contains("not enough space") || message.contains("disk quota")) {
      return true;
    }
    try {
      return Files.getFileStore(folder).getUsableSpace() < NEXT_TO_NOTHING;
    } catch (IOException other) {
      return false;
    }
  }

  static StudyException changed(Path study, String file) {
    return of("backup.changed", study.resolve(file), "this file changed while it was copied; the copy was taken away again",
        "wait until no other program writes it, then copy once more");
  }

  static StudyException broken(Path zip, String what) {
    return of("backup.broken", zip, what, "take another backup; this one is damaged or was changed");
  }
}
