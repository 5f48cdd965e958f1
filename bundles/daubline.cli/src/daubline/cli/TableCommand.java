package daubline.cli;

import daubline.analysis.StudyComparison;
import daubline.analysis.StudyResults;
import daubline.export.Discretion;
import daubline.export.Style;
import daubline.export.Table;
import daubline.export.TableSpec;
import daubline.export.Tables;
import daubline.export.format.ArchiveCsv;
import daubline.export.format.TerminalText;
import daubline.session.StudySession;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints one table of the publication. */
@Command(name = "table", mixinStandardHelpOptions = true, description = "Print one table of the publication; without a name all are listed.")
final class TableCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Mixin
  private ComparisonArguments arguments;

  @Mixin
  private TableArguments tables;

  @Parameters(index = "1", arity = "0..1", paramLabel = "TABLE", description = "short name of the table")
  private String name;

  @Option(names = "--csv", description = "as archive CSV (RFC 4180) instead of text")
  private boolean csv;

  @Override
  public Integer call() throws Exception {
    Optional<TableSpec> spec = name == null ? Optional.empty() : Tables.find(name);
    if (spec.isEmpty()) {
      Tables.all().forEach(t -> Out.line("%-24s %s", t.id(), t.title()));
      return name == null ? Out.DONE : Out.WRONG;
    }
    try (StudySession session = study.read()) {
      StudyResults results = StudyComparison.of(session, arguments.options());
      Table table = new Discretion(results.snapshot().record().people()).table(spec.get().build(results, tables.options()));
      Out.line("%s", csv ? new ArchiveCsv().text(table).stripTrailing() : new TerminalText(Style.PLAIN).text(table).stripTrailing());
      return Out.DONE;
    }
  }
}
