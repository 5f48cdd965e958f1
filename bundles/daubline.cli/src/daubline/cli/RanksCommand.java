package daubline.cli;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.Snapshots;
import daubline.analysis.StudyRanking;
import daubline.analysis.StudySnapshot;
import daubline.engine.inference.Progress;
import daubline.engine.inference.Ranking;
import daubline.session.StudySession;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How far the order of the trials can be relied on. */
@Command(name = "ranks", mixinStandardHelpOptions = true, description = "Say how far the order of the trials can be relied on when weights and "
    + "measurements are uncertain, which criteria tell the trials apart, and which different recipes agree equally well.")
final class RanksCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Mixin
  private ComparisonArguments arguments;

  @Option(names = "--pairs", description = "print also the probability that each trial agrees better than each other")
  private boolean pairs;

  @Option(names = "--weights", description = "print also the weights under which each trial would come first")
  private boolean weights;

  @Option(names = "--json", description = "write everything as JSON (docs/results-as-json.md)")
  private boolean json;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = study.read()) {
      StudySnapshot snapshot = Snapshots.of(session);
      ComparisonOptions options = arguments.options();
      List<Ranking> rankings = StudyRanking.of(snapshot, options, Progress.NONE).stream().filter(r -> !r.places().isEmpty()).toList();
      if (rankings.isEmpty()) {
        Out.line("nothing to rank: no trial could be compared with any of these sheets");
        return Out.WRONG;
      }
      if (json) {
        ResultJson.write(System.out, "daubline ranking 1", snapshot, options, new RanksJson(snapshot, rankings));
      } else {
        new RanksText(snapshot, options, pairs, weights).print(rankings);
      }
      return Out.DONE;
    }
  }
}
