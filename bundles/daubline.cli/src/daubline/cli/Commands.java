package daubline.cli;

import daubline.session.StudyException;
import picocli.CommandLine;

/** Runs commands and turns what goes wrong into a message and an exit code. */
final class Commands {

  private Commands() {
  }

  /** Runs one command; the exit code is 0 when done, 1 when something is wrong with a study or file, 2 for wrong usage. */
  static int run(String... arguments) {
    CommandLine line = new CommandLine(new Daubline()).setCaseInsensitiveEnumValuesAllowed(true).setUsageHelpAutoWidth(true);
    line.setExecutionExceptionHandler((failure, command, parsed) -> {
      System.err.println(failure instanceof StudyException study ? study.finding().toString() : "error: " + failure);
      if (!(failure instanceof StudyException) && !(failure instanceof IllegalArgumentException)) {
        failure.printStackTrace();
      }
      return Out.WRONG;
    });
    return line.execute(arguments);
  }
}
