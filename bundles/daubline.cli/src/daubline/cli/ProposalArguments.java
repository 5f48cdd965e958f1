package daubline.cli;

import daubline.analysis.StudySnapshot;
import daubline.analysis.design.BurntTrials;
import daubline.analysis.design.DesignBrief;
import daubline.analysis.design.Foreseen;
import daubline.analysis.design.Proposal;
import daubline.analysis.design.Season;
import daubline.analysis.design.SeriesSetup;
import daubline.analysis.record.SeriesData;
import daubline.engine.design.Progress;
import daubline.engine.design.Run;
import daubline.engine.design.Strata;
import daubline.session.StudySession;
import java.time.LocalDate;
import java.util.List;
import picocli.CommandLine.Option;

/** What a proposal is asked with. */
final class ProposalArguments {

  @Option(names = "--trials", paramLabel = "N", defaultValue = "0", description = "most trials (default: as many as stock and season assure)")
  private int trials;

  @Option(names = "--aim", paramLabel = "AIM", defaultValue = "", description = "which-matter, how-much, best-setting or explore (default: that of the series)")
  private String aim;

  @Option(names = "--take", paramLabel = "DESIGN", defaultValue = "", description = "take this design instead of the one recommended, by its name in the list")
  private String kind;

  @Option(names = "--furnace-ratio", paramLabel = "R", defaultValue = "1",
      description = "variance between furnaces over that between trials (default: ${DEFAULT-VALUE})")
  private double ratio;

  @Option(names = "--starts", paramLabel = "N", defaultValue = "20", description = "random starts of each search (default: ${DEFAULT-VALUE})")
  private int starts;

  @Option(names = "--seed", paramLabel = "N", description = "seed of the searches and of the order (default: that of the series, or today's date)")
  private Long seed;

  @Option(names = "--leave-burnt", description = "leave the trials of the series that were burnt already aside, instead of adding to them")
  private boolean leaveBurnt;

  @Option(names = "--ignore-forecast", description = "allow settings at which the forecast says the furnace would choke or stay cold")
  private boolean ignoreForecast;

  Proposal propose(StudySession session, StudySnapshot snapshot, SeriesData data) {
    DesignBrief brief = brief(snapshot, data);
    if (!ignoreForecast && brief.isReady()) {
      brief = Proposal.heedingForecast(brief, Foreseen.of(session, SeriesSetup.find(session, data.id()), brief.factors()));
    }
    List<Run> done = leaveBurnt || !brief.isReady() ? List.of() : BurntTrials.of(snapshot, brief, false).design().runs();
    return Proposal.of(brief, Season.of(data), new Proposal.Options(trials, kind, new Strata(ratio, 0), done, starts, seed(data)), Progress.NONE);
  }

  private DesignBrief brief(StudySnapshot snapshot, SeriesData data) {
    DesignBrief brief = DesignBrief.of(snapshot, data);
    return aim.isBlank() ? brief : new DesignBrief(brief.series(), brief.factors(), brief.rules(), DesignSetup.aim(aim), brief.findings());
  }

  Strata strata() {
    return new Strata(ratio, 0);
  }

  long seed(SeriesData data) {
    return seed != null ? seed : data.seed().isEmpty() ? Long.parseLong(LocalDate.now().toString().replace("-", "")) : Long.parseLong(data.seed());
  }
}
