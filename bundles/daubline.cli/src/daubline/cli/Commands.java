package daubline.cli;

import daubline.base.FileFault;
import daubline.intake.IntakeException;
import daubline.session.StudyException;
import java.io.IOException;
import java.io.UncheckedIOException;
import picocli.CommandLine;

/** Runs commands and turns what goes wrong into a message and an exit code. */
final class Commands {

  private Commands() {
  }

  /** Runs one command; the exit code is 0 when done, 1 when something is wrong with a study or file, 2 for wrong usage. */
  static int run(String... arguments) {
    CommandLine line = new CommandLine(new Daubline()).setCaseInsensitiveEnumValuesAllowed(true).setUsageHelpAutoWidth(true);
    line.setExecutionExceptionHandler((failure, command, parsed) -> {
      switch (failure) {
        case StudyException study -> System.err.println(study.finding());
        case IntakeException intake -> intake.findings().forEach(System.err::println);
        case IllegalArgumentException argument -> System.err.println("error: " + argument.getMessage());
        case IOException file -> System.err.println("error: " + FileFault.of(file));
        case UncheckedIOException file -> System.err.println("error: " + FileFault.of(file.getCause()));
        default -> failure.printStackTrace();
      }
      return Out.WRONG;
    });
    return line.execute(arguments);
  }
}
