package daubline.cli;

import daubline.analysis.deposit.HiddenNames;
import daubline.analysis.design.Deviation;
import daubline.export.Discretion;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What was done otherwise than the frozen plan said. */
@Command(name = "deviations", mixinStandardHelpOptions = true, description = "List what was done otherwise than the frozen plan said, with the reasons noted.")
final class DesignDeviations implements Callable<Integer> {

  @Mixin
  private SeriesArgument series;

  @Option(names = "--trial", paramLabel = "TRIAL", description = "note a reason at this trial, by name or id")
  private String trial;

  @Option(names = "--because", paramLabel = "TEXT", description = "the reason")
  private String because;

  @Option(names = "--json", description = "print JSON")
  private boolean json;

  @Override
  public Integer call() throws Exception {
    if (trial != null && because != null) {
      int done = series.change((session, s, snapshot) -> daubline.analysis.design.SeriesSetup.deviation(session, s, trial, because));
      Out.line("noted at %s", trial);
      return done;
    }
    return series.read((session, snapshot, data) -> {
      if (data.planning().plans().isEmpty()) {
        Out.line("no plan of %s was frozen, so nothing can deviate from it", data.name());
        return Out.WRONG;
      }
      List<Deviation> found = Deviation.of(snapshot, data);
      if (json) {
        Json.write(found.stream().map(d -> Json.map("trial", d.trial(), "what", d.what(), "planned", d.planned(), "done", d.done(), "because", d.because())).toList(), new Discretion(HiddenNames.of(session.study())), System.out);
        return Out.DONE;
      }
      found.forEach(d -> Out.line("%-24s %-24s planned %s; %s%s", d.trial(), d.what(), d.planned(), d.done(), d.because().isBlank() ? " – no reason noted" : " – " + d.because()));
      Out.line("%s from the plan frozen %s", Out.count(found.size(), "deviation"), data.planning().plans().get(data.planning().plans().size() - 1).frozenAt());
      return Out.DONE;
    });
  }
}
