package daubline.cli;

import daubline.base.Version;

/** The command line. It needs no display and no platform, only a class path. */
public final class Main {

  private Main() {
  }

  /** Runs one command and ends the process with its exit code: 0 done, 1 findings of severity error, 2 wrong usage. */
  public static void main(String[] args) {
    if (args.length == 1 && args[0].equals("--version")) {
      // answered before the command line parser is loaded: scripts ask often
      System.out.println(Version.line());
      return;
    }
    System.exit(Commands.run(args));
  }
}
