package daubline.cli;

import daubline.intake.IntakeException;
import daubline.intake.IntakeOptions;
import daubline.session.StudyException;
import daubline.session.StudySession;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Option;

/** How a file is to be read, and whether it is taken over or only looked at. */
final class IntakeArguments {

  @Option(names = "--set", paramLabel = "SETTING=TEXT", description = "how to read it, such as decimal=comma, delimiter=semicolon, "
      + "encoding=windows-1252, header=3, dates=dmy, unit:HEADING=cm, column:HEADING=name; for a table also sheet=Name; for analyses also "
      + "units=3, convert:Si=SiO2, \"of:5=trial T4\", of:*=…, row:5:iron_basis=…; for a logger also "
      + "time=Time, start=2031-08-16T09:41:15+01:00, offset=-75, interval=2; save=NAME and mapping=NAME keep and use settings; may be repeated")
  private Map<String, String> settings = new LinkedHashMap<>();

  @Option(names = "--apply", description = "change the study and save it")
  private boolean apply;

  /** What a preview does when it is taken over. */
  interface Taking {
    void take() throws IntakeException;
  }

  IntakeOptions options() throws IntakeException {
    IntakeOptions options = IntakeOptions.none();
    for (Map.Entry<String, String> setting : settings.entrySet()) {
      options = options.with(setting.getKey(), setting.getValue());
    }
    return options;
  }

  StudySession open(StudyArgument study) throws StudyException {
    return apply ? study.open() : study.read();
  }

  /**
   * Takes a preview over if that was asked for and nothing stands against it, and says what was done.
   *
   * @param wrong exit code of the findings
   */
  int finish(StudySession session, int wrong, boolean canApply, boolean changesAnything, Taking taking) throws IntakeException, StudyException {
    if (!apply || !canApply) {
      Out.line(canApply ? "nothing was changed; --apply takes it over" : "nothing was changed; mend the errors first");
      return wrong;
    }
    if (changesAnything) {
      taking.take();
      session.save();
    }
    Out.line(changesAnything ? "done and saved" : "nothing to do");
    return Out.DONE;
  }
}
