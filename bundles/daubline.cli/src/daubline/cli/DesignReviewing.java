package daubline.cli;

import daubline.analysis.StudySnapshot;
import daubline.analysis.deposit.HiddenNames;
import daubline.analysis.design.BurntTrials;
import daubline.analysis.design.Deviation;
import daubline.analysis.design.DesignBrief;
import daubline.analysis.design.FrozenDesign;
import daubline.analysis.record.PlanningData.FrozenData;
import daubline.analysis.record.SeriesData;
import daubline.base.Printed;
import daubline.charts.CorrelationFigure;
import daubline.engine.design.Design;
import daubline.engine.design.Strata;
import daubline.engine.design.advise.Question;
import daubline.engine.design.judge.DesignReview;
import daubline.export.Discretion;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What a design can show: that of the frozen plan, of the trials burnt, or one proposed. */
@Command(name = "review", mixinStandardHelpOptions = true, description = "Say what a design can and cannot show: the frozen plan, the trials burnt, or the design proposed.")
final class DesignReviewing implements Callable<Integer> {

  @Mixin
  private SeriesArgument series;

  @Mixin
  private ProposalArguments arguments;

  @Option(names = "--burnt", description = "the trials burnt, as they were burnt")
  private boolean burnt;

  @Option(names = "--json", description = "print JSON")
  private boolean json;

  @Option(names = "--map", paramLabel = "FILE", description = "write the map of what runs together as SVG, PDF or PNG")
  private Path map;

  @Override
  public Integer call() throws Exception {
    return series.read((session, snapshot, data) -> {
      DesignBrief brief = DesignBrief.of(snapshot, data);
      Optional<FrozenData> frozen = burnt ? Optional.empty() : FrozenDesign.last(brief);
      Design design = frozen.isPresent() ? FrozenDesign.of(snapshot, brief).orElseThrow() : other(session, snapshot, data, brief);
      if (!brief.isReady() || design.size() == 0) {
        brief.findings().forEach(f -> Out.line("%s", f));
        Out.line(design.size() == 0 ? "there is no trial to review" : "");
        return Out.WRONG;
      }
      Question question = frozen.flatMap(f -> DesignBrief.question(f.aim())).orElse(brief.question());
      Strata strata = frozen.map(f -> arguments.strata(FrozenDesign.strata(f))).orElseGet(() -> arguments.strata(data));
      DesignReview review = DesignReview.of(design, question.model(brief.factors()), brief.space(), strata);
      if (json) {
        Json.write(DesignJson.review(review), new Discretion(HiddenNames.of(session.study())), System.out);
      } else {
        frozen.ifPresent(f -> frozen(f, strata, Deviation.of(snapshot, data).size()));
        DesignText.print(design, review);
      }
      if (map != null) {
        FigureFiles.write(new CorrelationFigure(review.correlations()), "What runs together in " + data.name(), map);
        Out.line("wrote %s", map);
      }
      return Out.DONE;
    });
  }

  /** The trials burnt, or a proposal where nothing was frozen. */
  private Design other(StudySession session, StudySnapshot snapshot, SeriesData data, DesignBrief brief) {
    if (!burnt) {
      return arguments.propose(session, snapshot, data).plan().design();
    }
    BurntTrials trials = BurntTrials.of(snapshot, brief, false);
    trials.findings().forEach(f -> Out.line("%s", f));
    return trials.design();
  }

  private static void frozen(FrozenData plan, Strata strata, int deviations) {
    Out.line("The plan frozen %s (seed %s, %s, version %s); variance between furnaces %s times that between trials, between days %s times", plan.frozenAt(), plan.seed(),
        plan.algorithm(), plan.version(), Printed.number(strata.furnace()), Printed.number(strata.day()));
    Out.line("%s from it so far%s", Out.count(deviations, "deviation"), deviations == 0 ? "" : ": “design deviations” lists them with their reasons, “design review --burnt” reviews what was burnt");
  }
}
