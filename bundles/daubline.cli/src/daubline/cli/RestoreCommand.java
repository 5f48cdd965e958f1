package daubline.cli;

import daubline.session.StudySession;
import daubline.session.backup.BackupReader;
import daubline.session.backup.Work;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Makes a study of a backup, or only compares its files. */
@Command(name = "restore", mixinStandardHelpOptions = true,
    description = "Compare every file of a backup with its SHA-256; with a folder, make a study of it there.")
final class RestoreCommand implements Callable<Integer> {

  @Parameters(index = "0", paramLabel = "BACKUP", description = "a file that “backup” wrote")
  private Path file;

  @Parameters(index = "1", arity = "0..1", paramLabel = "FOLDER", description = "a new folder for the study; without it nothing is written")
  private Path folder;

  @Override
  public Integer call() throws Exception {
    try (BackupReader backup = BackupReader.open(file)) {
      int files = folder == null ? backup.compare(Work.UNWATCHED) : backup.restore(folder, Work.UNWATCHED);
      Out.line("%s: %d files agree with their SHA-256", file, files);
    }
    if (folder != null) {
      try (StudySession session = StudySession.read(folder)) {
        Out.line("made %s in %s", session.study().getName(), session.folder());
        return Blindness.isOn(session) ? Out.DONE : Out.findings(session.findings());
      }
    }
    return Out.DONE;
  }
}
