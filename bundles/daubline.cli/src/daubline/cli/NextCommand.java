package daubline.cli;

import daubline.analysis.deposit.HiddenNames;
import daubline.analysis.design.BurntTrials;
import daubline.analysis.design.DesignBrief;
import daubline.analysis.design.Foreseen;
import daubline.analysis.design.NextSteps;
import daubline.analysis.design.Outcome;
import daubline.analysis.design.SeriesEffects;
import daubline.analysis.design.SeriesSetup;
import daubline.base.Version;
import daubline.engine.design.Factor;
import daubline.engine.design.Progress;
import daubline.engine.design.Strata;
import daubline.engine.design.next.NextTrial;
import daubline.export.Discretion;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What to burn next. */
@Command(name = "next", mixinStandardHelpOptions = true,
    description = "Suggest the next trial of a series: what sharpens the effects, what tells the reconstructions apart, what may agree better; with costs, how sure, and ties.")
final class NextCommand implements Callable<Integer> {

  @Mixin
  private SeriesArgument series;

  @Mixin
  private OutcomeArguments arguments;

  @Option(names = "--furnace-ratio", paramLabel = "R", defaultValue = "1", description = "variance between furnaces over that between trials (default: ${DEFAULT-VALUE})")
  private double ratio;

  @Option(names = "--seed", paramLabel = "N", defaultValue = "20260101", description = "seed of the searches (default: ${DEFAULT-VALUE})")
  private long seed;

  @Option(names = "--json", description = "print JSON")
  private boolean json;

  @Override
  public Integer call() throws Exception {
    return series.read((session, snapshot, data) -> {
      DesignBrief brief = arguments.brief(snapshot, data);
      BurntTrials burnt = arguments.burnt(snapshot, brief);
      Outcome outcome = arguments.outcome(snapshot, burnt).orElseGet(() -> Outcome.of(snapshot, snapshot.variables().get("bloom_mass"), burnt.trials()));
      SeriesEffects effects = SeriesEffects.of(snapshot, brief, burnt, outcome, SeriesEffects.Terms.USUAL, 0.95, seed);
      Foreseen foreseen = Foreseen.of(session, SeriesSetup.find(session, data.id()), brief.factors());
      NextSteps steps = NextSteps.of(new NextSteps.Request(snapshot, effects, arguments.agreement(snapshot, burnt).values(), foreseen, new Strata(ratio, 0), seed), Progress.NONE);
      if (json) {
        Json.write(json(brief, steps), new Discretion(HiddenNames.of(session.study())), System.out);
      } else {
        print(brief, steps);
      }
      return steps.next().suggestions().isEmpty() ? Out.WRONG : Out.DONE;
    });
  }

  private static void print(DesignBrief brief, NextSteps steps) {
    Out.line("%s: what to burn next", brief.series().name());
    for (NextTrial.Suggestion s : steps.next().suggestions()) {
      Out.line("  %s", s.text());
      Out.line("      this trial %s: %s", s.aim().word(), s.separates());
      Out.line("      how sure: %s", s.certainty());
      Out.line("      cost: %s", s.cost().isBlank() ? "not stated" : s.cost());
      s.ties().forEach(t -> Out.line("      nearly as good: %s", text(brief.factors(), t)));
    }
    steps.findings().forEach(f -> Out.line("  %s", f));
  }

  private static String text(List<Factor> factors, double[] setting) {
    return IntStream.range(0, setting.length).mapToObj(j -> factors.get(j).name() + " " + factors.get(j).show(setting[j])).collect(Collectors.joining(", "));
  }

  private static Map<String, Object> json(DesignBrief brief, NextSteps steps) {
    return Json.map("version", Version.NUMBER, "series", brief.series().name(), "suggestions", steps.next().suggestions().stream().map(s -> Json.map("aim", s.aim().word(), "setting",
        s.text(), "codes", s.setting(), "gain", s.gain(), "separates", s.separates(), "certainty", s.certainty(), "cost", s.cost(), "ties",
        s.ties().stream().map(t -> text(brief.factors(), t)).toList())).toList(), "findings", DesignJson.findings(steps.findings()));
  }
}
