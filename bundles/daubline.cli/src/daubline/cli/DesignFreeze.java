package daubline.cli;

import daubline.analysis.Snapshots;
import daubline.analysis.design.DesignBrief;
import daubline.analysis.design.Foreseen;
import daubline.analysis.design.PlanFreezer;
import daubline.analysis.design.Proposal;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes the proposed plan into the study, with its predictions. */
@Command(name = "freeze", mixinStandardHelpOptions = true,
    description = "Write the proposed plan into the study: trials in their order, furnaces to build, predictions with the time they were stated.")
final class DesignFreeze implements Callable<Integer> {

  @Mixin
  private SeriesArgument series;

  @Mixin
  private ProposalArguments arguments;

  @Option(names = "--anew", description = "withdraw the last plan first, as long as none of it was burnt")
  private boolean anew;

  @Option(names = "--draws", paramLabel = "N", defaultValue = "100", description = "draws behind each prediction; 0 for none (default: ${DEFAULT-VALUE})")
  private int draws;

  @Override
  public Integer call() throws Exception {
    return series.change((session, s, snapshot) -> {
      if (anew && PlanFreezer.isReplaceable(s)) {
        PlanFreezer.withdraw(session, s);
      }
      var now = Snapshots.of(session);
      Proposal proposal = arguments.propose(session, now, DesignBrief.find(now, s.getId()));
      Foreseen foreseen = Foreseen.of(session, s, proposal.brief().factors());
      Foreseen.Outlook outlook = draws > 0 ? foreseen.outlook(proposal.plan().design(), draws, proposal.plan().seed()) : new Foreseen.Outlook(List.of(), List.of());
      PlanFreezer.freeze(session, s, proposal, ZonedDateTime.now().truncatedTo(ChronoUnit.SECONDS).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME), outlook.stated());
      DesignText.order(proposal);
      outlook.findings().forEach(f -> Out.line("  %s", f));
      Out.line("froze %s: %d trials, %d predictions, seed %d", proposal.chosen().name(), proposal.plan().design().size(), outlook.stated().size(), proposal.plan().seed());
    });
  }
}
