package daubline.cli;

import daubline.intake.Intake;
import daubline.intake.Preview;
import daubline.intake.PreviewRow;
import daubline.intake.Target;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes a table over into a study, after a preview. */
@Command(name = "import", mixinStandardHelpOptions = true,
    description = "Say what a CSV file, workbook or – for citations – BibTeX or RIS file would change in a study; with --apply change it, all or nothing.")
final class ImportCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Parameters(index = "1", paramLabel = "FILE", description = "CSV file, workbook, .bib or .ris")
  private Path file;

  @Option(names = "--as", required = true, paramLabel = "TARGET", description = "what it is a table of: ${COMPLETION-CANDIDATES}")
  private Target target;

  @Mixin
  private IntakeArguments intake;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = intake.open(study)) {
      Preview preview = Intake.preview(session, file, target, intake.options());
      print(preview);
      int wrong = Out.findings(preview.findings());
      return intake.finish(session, wrong, preview.canApply(), preview.changesAnything(), () -> preview.apply(session));
    }
  }

  private static void print(Preview preview) {
    Out.line("%s, %s", preview.place(), preview.how());
    for (PreviewRow.State state : PreviewRow.State.values()) {
      Out.line("  %6d %s", preview.count(state), state.word());
    }
    preview.rows().stream().filter(row -> !row.changes().isEmpty()).limit(200)
        .forEach(row -> Out.line("  row %d, %s, %s: %s", row.number(), row.name(), row.state().word(), String.join("; ", row.changes())));
    if (!preview.unreadColumns().isEmpty()) {
      Out.line("  columns not read: %s", String.join(", ", preview.unreadColumns()));
    }
  }
}
