package daubline.cli;

import daubline.intake.Intake;
import daubline.intake.Target;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Writes an empty table to fill in. */
@Command(name = "template", mixinStandardHelpOptions = true,
    description = "Write an empty table with every column explained, to fill in and import.")
final class TemplateCommand implements Callable<Integer> {

  @Parameters(index = "0", paramLabel = "TARGET", description = "one of: ${COMPLETION-CANDIDATES}")
  private Target target;

  @Parameters(index = "1", paramLabel = "FILE", description = "the new file; its name ends in .xlsx or .csv")
  private Path file;

  @Override
  public Integer call() throws Exception {
    Intake.template(target, file).forEach(written -> Out.line("wrote %s", written));
    Out.line("%s", Intake.explanation(target));
    return Out.DONE;
  }
}
