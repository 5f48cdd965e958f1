package daubline.cli;

import daubline.analysis.deposit.HiddenNames;
import daubline.analysis.design.BurntTrials;
import daubline.analysis.design.DesignBrief;
import daubline.analysis.design.FrozenDesign;
import daubline.charts.CorrelationFigure;
import daubline.engine.design.Design;
import daubline.engine.design.Model;
import daubline.engine.design.judge.DesignReview;
import daubline.export.Discretion;
import java.nio.file.Path;
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
      Design design;
      if (burnt) {
        BurntTrials trials = BurntTrials.of(snapshot, brief, false);
        trials.findings().forEach(f -> Out.line("%s", f));
        design = trials.design();
      } else {
        design = FrozenDesign.of(snapshot, brief).orElse(null);
      }
      if (design == null) {
        design = arguments.propose(session, snapshot, data).plan().design();
      }
      if (!brief.isReady() || design.size() == 0) {
        brief.findings().forEach(f -> Out.line("%s", f));
        Out.line(design.size() == 0 ? "there is no trial to review" : "");
        return Out.WRONG;
      }
      Model model = brief.question().model(brief.factors());
      DesignReview review = DesignReview.of(design, model, brief.space(), arguments.strata(data));
      if (json) {
        Json.write(DesignJson.review(review), new Discretion(HiddenNames.of(session.study())), System.out);
      } else {
        DesignText.print(design, review);
      }
      if (map != null) {
        FigureFiles.write(new CorrelationFigure(review.correlations()), "What runs together in " + data.name(), map);
        Out.line("wrote %s", map);
      }
      return Out.DONE;
    });
  }
}
