package daubline.cli;

import daubline.analysis.checks.Checks;
import daubline.session.StudySession;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Runs the integrity checks. */
@Command(name = "check", mixinStandardHelpOptions = true, description = "Check a study: values, origins, masses, analyses, logs, files.")
final class CheckCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = study.read()) {
      return Out.findings(Checks.run(session));
    }
  }
}
