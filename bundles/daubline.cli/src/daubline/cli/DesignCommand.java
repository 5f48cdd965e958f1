package daubline.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Everything about planning a series; the steps are its subcommands. */
@Command(name = "design", mixinStandardHelpOptions = true,
    description = "Plan a series: say what is varied and what there is, see how many trials that allows, have a design proposed and reviewed, "
        + "freeze it, and print run sheets.",
    subcommands = {DesignSetup.Series.class, DesignSetup.Factor.class, DesignSetup.Forbid.class, DesignSetup.Stock.class, DesignSetup.Labour.class, DesignSetup.Size.class,
        DesignCapacity.class, DesignPropose.class, DesignReviewing.class, DesignFreeze.class, DesignSheet.class, DesignDeviations.class})
final class DesignCommand implements Runnable {

  @Spec
  private CommandSpec spec;

  @Override
  public void run() {
    spec.commandLine().usage(System.out);
  }
}
