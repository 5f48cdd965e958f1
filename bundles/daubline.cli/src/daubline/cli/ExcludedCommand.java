package daubline.cli;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyComparison;
import daubline.analysis.StudyResults;
import daubline.analysis.Target;
import daubline.base.Printed;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.CriterionResult;
import daubline.engine.inference.Exclusion;
import daubline.session.StudySession;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Which trials the evidence rules out. */
@Command(name = "excluded", mixinStandardHelpOptions = true, description = "Say which trials the evidence rules out as reproductions, and the "
    + "shortest list of criteria that does it.")
final class ExcludedCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Mixin
  private ComparisonArguments arguments;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = study.read()) {
      ComparisonOptions options = arguments.options();
      StudyResults results = StudyComparison.of(session, options);
      double alpha = options.settingsOf(results.snapshot()).alpha();
      List<Target> tested = options.targets(results.snapshot()).stream()
          .filter(t -> results.ranked(t.sheet().id()).stream().anyMatch(Comparison::isTested)).toList();
      tested.forEach(target -> print(target, results.ranked(target.sheet().id()), alpha));
      Page.say(0, tested.isEmpty() ? "nothing could be compared, so nothing is ruled out"
          : "Of many criteria some disagree by chance. A list counts when as many would disagree as much in fewer than " + Printed.number(alpha)
              + " of faithful repeats, allowing for the number of lists tried; the criteria are taken as independent. What is not ruled out is not "
              + "thereby shown to have been so.");
      return tested.isEmpty() ? Out.WRONG : Out.DONE;
    }
  }

  private static void print(Target target, List<Comparison> ranked, double alpha) {
    Out.line("%s", target.heading());
    ranked.stream().filter(Comparison::isTested).forEach(c -> print(c, Exclusion.of(c, alpha)));
    Out.line("");
  }

  private static void print(Comparison comparison, Exclusion exclusion) {
    Page.hang(2, 6, comparison.trialName() + ": " + (exclusion.isRuledOut() ? "ruled out by " + names(exclusion) + ", chance "
        : "not ruled out, chance of the strongest list ") + Page.probability(exclusion.probability()));
    for (CriterionResult result : exclusion.criteria()) {
      Page.hang(6, 8, result.name() + ": " + result.evidence() + " in the evidence, " + result.found() + " as found, p "
          + Page.probability(result.compatibility()));
    }
  }

  /** The criteria of a list in words. */
  static String names(Exclusion exclusion) {
    return exclusion.criteria().stream().map(CriterionResult::name).collect(Collectors.joining(", "));
  }
}
