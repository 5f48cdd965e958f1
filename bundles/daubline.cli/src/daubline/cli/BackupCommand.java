package daubline.cli;

import daubline.session.StudySession;
import daubline.session.backup.Backup;
import daubline.session.backup.BackupReader;
import daubline.session.backup.BackupWriter;
import daubline.session.backup.KeepRule;
import daubline.session.backup.RollingBackups;
import daubline.session.backup.Work;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Copies a study as one dated file and compares what was written. */
@Command(name = "backup", mixinStandardHelpOptions = true, description = {
    "Write a study with its files as one dated file, read it back and compare the SHA-256 of every file.",
    "With --to into a folder on another disk; without it beside the study, in its private folder, when it changed since the last, thinned by --keep."})
final class BackupCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Option(names = "--to", paramLabel = "FOLDER", description = "an existing folder, best on another disk")
  private Path folder;

  @Option(names = "--keep", split = ",", arity = "1", paramLabel = "DAYS,WEEKS,MONTHS", defaultValue = "7,5,12",
      description = "of how many days, weeks and months in which one was made the newest backup stays (default: ${DEFAULT-VALUE})")
  private List<Integer> keep;

  @Option(names = "--without-files", description = "leave out photographs, logger and laboratory files; only without --to")
  private boolean withoutFiles;

  @Option(names = "--list", description = "list the backups in the private folder of the study and write nothing")
  private boolean list;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = study.unread()) {
      if (list) {
        for (Backup backup : RollingBackups.of(session.folder())) {
          Out.line("%s  %d KB  %s", backup.at(), Files.size(backup.file()) / 1024, backup.file());
        }
        return Out.DONE;
      }
      LocalDateTime now = LocalDateTime.now().truncatedTo(ChronoUnit.SECONDS);
      Optional<Backup> made = folder == null ? RollingBackups.roll(session.image(), rule(), !withoutFiles, now, Work.UNWATCHED)
          : Optional.of(BackupWriter.copy(session.image(), folder, now, Work.UNWATCHED));
      if (made.isEmpty()) {
        Out.line("the study did not change since its last backup");
        return Out.DONE;
      }
      try (BackupReader reader = BackupReader.open(made.get().file())) {
        Out.line("wrote %s", made.get().file());
        Out.line("read back: %d files agree with what was copied, by SHA-256", reader.files());
      }
      return Out.DONE;
    }
  }

  private KeepRule rule() {
    if (keep.size() != 3) {
      throw new IllegalArgumentException("--keep takes three numbers: of how many days, weeks and months a backup stays");
    }
    return new KeepRule(keep.get(0), keep.get(1), keep.get(2));
  }
}
