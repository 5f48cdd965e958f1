package daubline.cli;

import daubline.analysis.Snapshots;
import daubline.analysis.StudyRanking;
import daubline.base.Printed;
import daubline.engine.inference.Progress;
import daubline.engine.inference.Ranking;
import daubline.session.StudySession;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** How far the order of the trials can be relied on. */
@Command(name = "ranks", mixinStandardHelpOptions = true, description = "Say how far the order of the trials can be relied on when weights and "
    + "measurements are uncertain, and which criteria tell the trials apart.")
final class RanksCommand implements Callable<Integer> {

  private static final int SHOWN_RANKS = 4;

  @Mixin
  private StudyArgument study;

  @Mixin
  private ComparisonArguments arguments;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = study.read()) {
      List<Ranking> rankings = StudyRanking.of(Snapshots.of(session), arguments.options(), Progress.NONE);
      List<Ranking> shown = rankings.stream().filter(r -> !r.places().isEmpty()).toList();
      shown.forEach(RanksCommand::print);
      if (shown.isEmpty()) {
        Out.line("nothing to rank: no trial could be compared with any of these sheets");
      }
      return shown.isEmpty() ? Out.WRONG : Out.DONE;
    }
  }

  private static void print(Ranking ranking) {
    Out.line("%s", ranking.sheetName());
    Out.line("  share of draws in which each trial takes the first ranks, weights and measurements uncertain");
    ranking.places().forEach(place -> Out.line("  %-24s %s   ahead of the next with probability %s%s", place.trialName(), ranks(place),
        next(ranking, place), weights(place)));
    Out.line("  what the criteria do to the order");
    ranking.criteria().stream().filter(c -> !Double.isNaN(c.share()) && (c.share() != 0 || c.influence() != 0))
        .sorted(Comparator.comparingDouble((Ranking.Discrimination c) -> -Math.abs(c.share())))
        .forEach(c -> Out.line("  %-34s %4s %% of the difference; without it %s comes first, agreements change by up to %s%s", c.name(),
            Printed.fixed(c.share() * 100, 0), name(ranking, c.firstWithout()), Printed.fixed(c.influence(), 0),
            c.tellsApart() ? "" : "; it cannot tell the trials apart"));
    Out.line("");
  }

  private static String ranks(Ranking.Place place) {
    return Arrays.stream(place.acceptability()).limit(SHOWN_RANKS).mapToObj(share -> String.format(java.util.Locale.ROOT, "%3s %%", Printed.fixed(share * 100, 0)))
        .collect(Collectors.joining(" "));
  }

  private static String next(Ranking ranking, Ranking.Place place) {
    return ranking.places().stream().filter(p -> p.rank() == place.rank() + 1).findFirst()
        .map(p -> Printed.fixed(place.wins().getOrDefault(p.trial(), Double.NaN), 2)).orElse("–");
  }

  private static String weights(Ranking.Place place) {
    return Double.isNaN(place.confidence()) ? "; first under no weights" : "; first with probability " + Printed.fixed(place.confidence(), 2)
        + " under the weights that suit it best";
  }

  private static String name(Ranking ranking, String trial) {
    return ranking.places().stream().filter(p -> p.trial().equals(trial)).map(Ranking.Place::trialName).findFirst().orElse("none");
  }
}
