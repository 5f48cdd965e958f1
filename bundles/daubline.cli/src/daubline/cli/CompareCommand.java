package daubline.cli;

import daubline.analysis.StudyComparison;
import daubline.analysis.StudyResults;
import daubline.session.StudySession;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Compares trials with evidence and prints the ranking. */
@Command(name = "compare", mixinStandardHelpOptions = true, description = "Compare the remains of each trial with each evidence sheet.")
final class CompareCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Mixin
  private ComparisonArguments arguments;

  @Option(names = "--reasons", description = "say for each criterion why")
  private boolean reasons;

  @Option(names = "--trail", description = "say for each criterion where both values come from")
  private boolean trail;

  @Option(names = "--json", description = "write everything, trails too, as JSON")
  private boolean json;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = study.read()) {
      StudyResults results = StudyComparison.of(session, arguments.options());
      if (results.comparisons().isEmpty()) {
        Out.line("nothing to compare: the study needs a fired trial and an evidence sheet, and the names given must exist");
        return Out.WRONG;
      }
      if (json) {
        ComparisonJson.write(results, System.out);
      } else {
        new ComparisonText(reasons, trail).print(results);
      }
      return Out.DONE;
    }
  }
}
