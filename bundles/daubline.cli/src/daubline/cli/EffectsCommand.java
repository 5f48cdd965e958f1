package daubline.cli;

import daubline.analysis.deposit.HiddenNames;
import daubline.analysis.design.BurntTrials;
import daubline.analysis.design.DesignBrief;
import daubline.analysis.design.Outcome;
import daubline.analysis.design.SeriesEffects;
import daubline.base.Finding;
import daubline.charts.EffectFigures;
import daubline.export.Discretion;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What moved what. */
@Command(name = "effects", mixinStandardHelpOptions = true, description = "Say what moved an outcome of a series: estimates with intervals, and what could not have been "
    + "seen. Without --on or --agreement, list the outcomes that can be asked for.")
final class EffectsCommand implements Callable<Integer> {

  @Mixin
  private SeriesArgument series;

  @Mixin
  private OutcomeArguments outcome;

  @Option(names = "--terms", paramLabel = "TERMS", defaultValue = "usual", description = "usual, main, interactions or quadratic (default: ${DEFAULT-VALUE})")
  private SeriesEffects.Terms terms;

  @Option(names = "--confidence", paramLabel = "PERCENT", defaultValue = "95", description = "of the intervals (default: ${DEFAULT-VALUE})")
  private double confidence;

  @Option(names = "--seed", paramLabel = "N", defaultValue = "20260101", description = "seed of simulated limits and drawn permutations (default: ${DEFAULT-VALUE})")
  private long seed;

  @Option(names = "--figures", paramLabel = "FOLDER", description = "write the plots as SVG into this folder")
  private Path figures;

  @Option(names = "--json", description = "print JSON")
  private boolean json;

  @Override
  public Integer call() throws Exception {
    return series.read((session, snapshot, data) -> {
      DesignBrief brief = outcome.brief(snapshot, data);
      BurntTrials burnt = outcome.burnt(snapshot, brief);
      Optional<Outcome> asked = outcome.outcome(snapshot, burnt);
      if (asked.isEmpty()) {
        return list(brief, burnt, Outcome.possible(snapshot, brief, burnt.trials()));
      }
      SeriesEffects effects = SeriesEffects.of(snapshot, brief, burnt, asked.get(), terms, confidence / 100, seed);
      if (json) {
        Json.write(EffectsText.json(effects), new Discretion(HiddenNames.of(session.study())), System.out);
      } else {
        EffectsText.print(effects);
      }
      if (figures != null) {
        for (EffectFigures.Named figure : EffectFigures.of(effects)) {
          Path file = figures.resolve(figure.id() + ".svg");
          FigureFiles.write(figure.figure(), figure.title(), file);
          Out.line("wrote %s", file);
        }
      }
      return effects.report().isPresent() ? Out.DONE : Out.WRONG;
    });
  }

  private static int list(DesignBrief brief, BurntTrials burnt, List<Outcome> possible) {
    brief.findings().forEach(f -> Out.line("%s", f));
    burnt.findings().forEach(f -> Out.line("%s", f));
    if (possible.isEmpty()) {
      Out.line("%s", Finding.error("effects.nothing", brief.series().name(), burnt.trials().size() + " trials burnt, and no outcome in three of them",
          "burn trials and record what they left"));
      return Out.WRONG;
    }
    Out.line("ask with --on VARIABLE, or --agreement SHEET; %s has in three trials or more:", brief.series().name());
    possible.forEach(o -> Out.line("  %-28s %s, %d trials", o.id(), o.name(), o.known()));
    return Out.DONE;
  }
}
