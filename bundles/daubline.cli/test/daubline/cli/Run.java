package daubline.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** One run of a command: its exit code, what it printed and what it complained. */
record Run(int exit, String out, String err) {

  static Run of(String... arguments) {
    PrintStream out = System.out;
    PrintStream err = System.err;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    ByteArrayOutputStream complained = new ByteArrayOutputStream();
    System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
    System.setErr(new PrintStream(complained, true, StandardCharsets.UTF_8));
    try {
      int exit = Commands.run(arguments);
      return new Run(exit, printed.toString(StandardCharsets.UTF_8), complained.toString(StandardCharsets.UTF_8));
    } finally {
      System.setOut(out);
      System.setErr(err);
    }
  }
}
