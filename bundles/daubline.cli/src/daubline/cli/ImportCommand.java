package daubline.cli;

import daubline.intake.Intake;
import daubline.intake.IntakeException;
import daubline.intake.IntakeOptions;
import daubline.intake.Preview;
import daubline.intake.PreviewRow;
import daubline.intake.Recognised;
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
    description = "Say what a CSV file, workbook or – for citations – BibTeX or RIS file would change in a study; with --apply change it, all or nothing.")
final class ImportCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Parameters(index = "1", paramLabel = "FILE", description = "CSV file, workbook, .bib or .ris")
  private Path file;

  @Option(names = "--as", required = true, paramLabel = "TARGET", description = "what it is a table of: ${COMPLETION-CANDIDATES}")
  private Target target;

  @Option(names = "--iron-basis", paramLabel = "BASIS", description = "for analyses: how iron is reported, such as \"all iron as FeO\", \"FeO and Fe2O3\" or \"not stated\"")
  private String ironBasis;

  @Option(names = "--replicates", paramLabel = "WAY", description = "for analyses: repeated measurements of one sample are kept, joined to their mean, or apart")
  private String replicates;

  @Option(names = "--samples", paramLabel = "WHERE", description = "for analyses: rows or columns")
  private String samples;

  @Option(names = "--confirm", paramLabel = "ASPECTS", description = "for analyses: take the guesses as they are printed, such as units,belonging")
  private String confirm;

  @Mixin
  private IntakeArguments intake;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = intake.open(study)) {
      Preview preview = Intake.preview(session, file, target, options());
      print(preview);
      preview.recognised().forEach(ImportCommand::print);
      int wrong = Out.findings(preview.findings());
      return intake.finish(session, wrong, preview.canApply(), preview.changesAnything(), () -> preview.apply(session));
    }
  }

  private IntakeOptions options() throws IntakeException {
    IntakeOptions options = intake.options();
    Map<String, String> said = new LinkedHashMap<>();
    said.put("set:iron_basis", ironBasis);
    said.put("replicates", replicates);
    said.put("samples", samples);
    said.put("confirm", confirm);
    for (Map.Entry<String, String> setting : said.entrySet()) {
      options = setting.getValue() == null ? options : options.with(setting.getKey(), setting.getValue());
    }
    return options;
  }

  private static void print(Recognised r) {
    String where = r.where().equals("*") ? "all" : r.where();
    Out.line("  %-10s %-10s %s: %s (%s)%s", r.state().word(), r.aspect().word(), where, r.found().isEmpty() ? "?" : r.found(), r.why(),
        r.isOpen() ? " --set \"" + r.setting() + "=…\"" : "");
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
