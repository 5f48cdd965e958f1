package daubline.cli;

import daubline.analysis.StudySnapshot;
import daubline.analysis.design.BurntTrials;
import daubline.analysis.design.DesignBrief;
import daubline.analysis.design.Foreseen;
import daubline.analysis.design.Proposal;
import daubline.analysis.design.Season;
import daubline.analysis.design.SeriesSetup;
import daubline.analysis.record.PlanningData.WishData;
import daubline.analysis.record.SeriesData;
import daubline.engine.design.Progress;
import daubline.engine.design.Run;
import daubline.engine.design.Strata;
import daubline.engine.design.advise.Extras;
import daubline.session.StudySession;
import java.time.LocalDate;
import java.util.List;
import picocli.CommandLine.Option;

/** What a proposal is asked with. */
final class ProposalArguments {

  @Option(names = "--trials", paramLabel = "N", description = "most trials; 0 for as many as stock and season assure (default: that of the series)")
  private Integer trials;

  @Option(names = "--centres", paramLabel = "N", description = "at least so many centre trials (default: that of the series, or none)")
  private Integer centres;

  @Option(names = "--repeats", paramLabel = "N", description = "so many trials burnt once more (default: that of the series, or none)")
  private Integer repeats;

  @Option(names = "--burns-per-day", paramLabel = "N", description = "trials that may share a day, each in another furnace (default: that of the series, or 1)")
  private Integer perDay;

  @Option(names = "--aim", paramLabel = "AIM", defaultValue = "", description = "which-matter, how-much, best-setting or explore (default: that of the series)")
  private String aim;

  @Option(names = "--take", paramLabel = "DESIGN", defaultValue = "", description = "take this design instead of the one recommended, by its name in the list")
  private String kind;

  @Option(names = "--furnace-ratio", paramLabel = "R", description = "variance between furnaces over that between trials (default: that of the series, or 1)")
  private Double ratio;

  @Option(names = "--day-ratio", paramLabel = "R", description = "variance between days over that between trials (default: that of the series, or 0)")
  private Double dayRatio;

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
    return Proposal.of(brief, Season.of(data), options(data, done), Progress.NONE);
  }

  private DesignBrief brief(StudySnapshot snapshot, SeriesData data) {
    DesignBrief brief = DesignBrief.of(snapshot, data);
    return aim.isBlank() ? brief : new DesignBrief(brief.series(), brief.factors(), brief.rules(), DesignSetup.aim(aim), brief.findings());
  }

  private Proposal.Options options(SeriesData data, List<Run> done) {
    WishData wishes = data.planning().wishes();
    return new Proposal.Options(stated(trials, wishes.trials()), kind, strata(data), new Extras(stated(centres, wishes.centres()), stated(repeats, wishes.repeats())),
        Math.max(1, stated(perDay, wishes.burnsPerDay())), done, starts, seed(data));
  }

  private static <T> T stated(T option, T otherwise) {
    return option == null ? otherwise : option;
  }

  /** How alike trials of a furnace and of a day are thought to be. */
  Strata strata(SeriesData data) {
    return strata(new Strata(data.planning().wishes().furnaceRatio(), data.planning().wishes().dayRatio()));
  }

  /** The same where other ratios stand when none is asked for. */
  Strata strata(Strata otherwise) {
    return new Strata(stated(ratio, otherwise.furnace()), stated(dayRatio, otherwise.day()));
  }

  long seed(SeriesData data) {
    return seed != null ? seed : data.seed().isEmpty() ? Long.parseLong(LocalDate.now().toString().replace("-", "")) : Long.parseLong(data.seed());
  }
}
