package daubline.cli;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyComparison;
import daubline.analysis.StudyResults;
import daubline.session.StudySession;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Compares trials with evidence and prints agreement and coverage, with reasons and origins when asked. */
@Command(name = "compare", mixinStandardHelpOptions = true, description = "Compare the remains of each trial, as found, with each evidence sheet, "
    + "with sites, phases, periods or regions, or with each other trial.")
final class CompareCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Mixin
  private ComparisonArguments arguments;

  @Option(names = "--reasons", description = "say for each criterion how and why: agreement, difference, compatibility, tolerance, reason")
  private boolean reasons;

  @Option(names = "--trail", description = "say also where both values come from, down to citation or person")
  private boolean trail;

  @Option(names = "--json", description = "write everything, trails too, as JSON (docs/results-as-json.md)")
  private boolean json;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = study.read()) {
      ComparisonOptions options = arguments.options();
      StudyResults results = StudyComparison.of(session, options);
      if (results.comparisons().isEmpty()) {
        Out.line("nothing to compare: the study needs a fired trial and an evidence sheet, and the names given must exist");
        return Out.WRONG;
      }
      if (json) {
        ResultJson.write(System.out, "daubline comparison 1", results.snapshot(), options, new ComparisonJson(results, options));
      } else {
        new ComparisonText(results, options, reasons || trail, trail).print();
      }
      return Out.DONE;
    }
  }
}
