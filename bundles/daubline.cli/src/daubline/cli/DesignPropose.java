package daubline.cli;

import daubline.analysis.deposit.HiddenNames;
import daubline.analysis.design.Proposal;
import daubline.export.Discretion;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Proposes a design with its reasons, and shows the others beside it. */
@Command(name = "propose", mixinStandardHelpOptions = true, description = "Propose a design with its reasons, the rejected ones beside it, its review and its random order.")
final class DesignPropose implements Callable<Integer> {

  @Mixin
  private SeriesArgument series;

  @Mixin
  private ProposalArguments arguments;

  @Option(names = "--json", description = "print JSON")
  private boolean json;

  @Override
  public Integer call() throws Exception {
    return series.read((session, snapshot, data) -> {
      Proposal proposal = arguments.propose(session, snapshot, data);
      if (json) {
        Json.write(DesignJson.proposal(proposal), new Discretion(HiddenNames.of(session.study())), System.out);
      } else {
        DesignText.print(proposal);
      }
      return Out.DONE;
    });
  }
}
