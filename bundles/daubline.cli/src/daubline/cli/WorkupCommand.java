package daubline.cli;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyComparison;
import daubline.analysis.StudyResults;
import daubline.base.Version;
import daubline.export.Provenance.Setting;
import daubline.publication.Publication;
import daubline.publication.PublicationOptions;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The main job: check a study, compare, rank, and write workbook, tables and figures. */
@Command(name = "workup", mixinStandardHelpOptions = true,
    description = "Check a study, compare every trial with every evidence sheet, print the ranking, and write workbook, tables and figures.")
final class WorkupCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Mixin
  private ComparisonArguments arguments;

  @Option(names = "--to", paramLabel = "FOLDER", defaultValue = "out", description = "where to write (default: ${DEFAULT-VALUE})")
  private Path folder;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = study.read()) {
      ComparisonOptions options = arguments.options();
      StudyResults results = StudyComparison.of(session, options);
      Out.line("%s", results.snapshot().name());
      int wrong = Out.findings(results.checks());
      Out.line("");
      new ComparisonText(false, false).print(results);
      Publication.Written written = Publication.write(results, folder, PublicationOptions.standard(Version.NUMBER, settings(options)));
      written.remarks().forEach(Out::line);
      written.files().forEach(file -> Out.line("wrote %s", file));
      Out.line("everything is in %s", folder.toAbsolutePath().normalize());
      return wrong;
    }
  }

  /** What the results depend on besides the study, for the notes sheet. */
  static List<Setting> settings(ComparisonOptions options) {
    return List.of(new Setting("draws", Integer.toString(options.draws())), new Setting("seed", Long.toString(options.seed())),
        new Setting("demonstrations", options.withDemonstrations() ? "compared" : "left out"));
  }
}
