package daubline.cli;

import daubline.base.Version;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The root of all commands. */
@Command(name = "daubline", mixinStandardHelpOptions = true, versionProvider = Daubline.Provider.class,
    description = "Smelting trials against excavated evidence.",
    subcommands = {PublishCommand.class, CheckCommand.class, CompareCommand.class, TableCommand.class, RanksCommand.class, ExcludedCommand.class,
        RepeatsCommand.class, SettingsCommand.class, CriteriaCommand.class, VariablesCommand.class, WhereCommand.class, ArcCommand.class, DesignCommand.class,
        EffectsCommand.class, NextCommand.class, ReconstructionsCommand.class, PredictCommand.class, BalanceCommand.class, TemplateCommand.class, ImportCommand.class, CitationsCommand.class,
        LoggerCommand.class, LotsCommand.class, MoistureCommand.class, WordsCommand.class, SheetsCommand.class, LabelsCommand.class, ValidateCommand.class, NewCommand.class, ReadDepositCommand.class, BackupCommand.class, RestoreCommand.class, MergeCommand.class, VisitsCommand.class, BlindCommand.class})
public final class Daubline implements Runnable {

  @Spec
  private CommandSpec spec;

  @Override
  public void run() {
    spec.commandLine().usage(System.out);
  }

  static final class Provider implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {Version.line()};
    }
  }
}
