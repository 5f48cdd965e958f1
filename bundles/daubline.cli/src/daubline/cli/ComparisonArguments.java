package daubline.cli;

import daubline.analysis.Against;
import daubline.analysis.ComparisonOptions;
import java.util.List;
import picocli.CommandLine.Option;

/** What to compare, and how exactly. */
final class ComparisonArguments {

  @Option(names = "--trial", paramLabel = "TRIAL", description = "only this trial, by name or id; may be repeated")
  private List<String> trials = List.of();

  @Option(names = "--sheet", paramLabel = "SHEET", description = "only this evidence sheet or site, by name or id; may be repeated")
  private List<String> sheets = List.of();

  @Option(names = "--against", paramLabel = "WHAT", defaultValue = "SHEET",
      description = "what to compare with: sheet (each evidence sheet), site, phase, period or region (feature by feature and as a group), "
          + "trial (the remains of each other trial); default: sheet")
  private Against against;

  @Option(names = "--repeats-as-tolerance", description = "use the spread of repeats as tolerance wherever it is known (see repeats)")
  private boolean repeats;

  @Option(names = "--with-demonstrations", description = "compare demonstrations too")
  private boolean demonstrations;

  @Option(names = "--draws", paramLabel = "N", defaultValue = "10000", description = "Monte Carlo draws (default: ${DEFAULT-VALUE})")
  private int draws;

  @Option(names = "--seed", paramLabel = "N", defaultValue = "20260101", description = "seed of the random numbers (default: ${DEFAULT-VALUE})")
  private long seed;

  @Option(names = "--threads", paramLabel = "N", description = "threads to use; changes no result (default: all cores)")
  private int threads = Runtime.getRuntime().availableProcessors();

  ComparisonOptions options() {
    return new ComparisonOptions(demonstrations, trials, sheets, draws, seed, threads, against, repeats);
  }
}
