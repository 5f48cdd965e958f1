package daubline.cli;

import daubline.intake.Intake;
import daubline.intake.IntakeOptions;
import daubline.intake.Preview;
import daubline.intake.PreviewRow;
import daubline.intake.Target;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes a table over into a study, after a preview. */
@Command(name = "import", mixinStandardHelpOptions = true,
    description = "Say what a CSV file or workbook would change in a study; with --apply change it, all or nothing.")
final class ImportCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Parameters(index = "1", paramLabel = "FILE", description = "CSV file or workbook")
  private Path file;

  @Option(names = "--as", required = true, paramLabel = "TARGET", description = "what it is a table of: ${COMPLETION-CANDIDATES}")
  private Target target;

  @Option(names = "--set", paramLabel = "SETTING=TEXT", description = "how to read it, such as decimal=comma, delimiter=semicolon, "
      + "encoding=windows-1252, sheet=Name, header=3, dates=dmy, unit:HEADING=cm, column:HEADING=name; may be repeated")
  private Map<String, String> settings = new LinkedHashMap<>();

  @Option(names = "--apply", description = "change the study and save it")
  private boolean apply;

  @Override
  public Integer call() throws Exception {
    IntakeOptions options = IntakeOptions.none();
    for (Map.Entry<String, String> setting : settings.entrySet()) {
      options = options.with(setting.getKey(), setting.getValue());
    }
    try (StudySession session = apply ? study.open() : study.read()) {
      Preview preview = Intake.preview(session, file, target, options);
      print(preview);
      int wrong = Out.findings(preview.findings());
      if (!apply || !preview.canApply()) {
        Out.line(preview.canApply() ? "nothing was changed; --apply takes it over" : "nothing was changed; mend the errors first");
        return wrong;
      }
      if (preview.changesAnything()) {
        preview.apply(session);
        session.save();
      }
      Out.line("%s: %s", preview.changesAnything() ? "done and saved" : "nothing to do", preview.label());
      return Out.DONE;
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
