package daubline.analysis;

import daubline.engine.inference.SheetData;
import java.util.List;

/**
 * What to compare and how exactly.
 *
 * @param withDemonstrations whether demonstrations take part
 * @param trials ids or names of the trials to compare; empty for all
 * @param sheets ids or names of the sheets to compare with; empty for all
 * @param draws Monte Carlo draws
 * @param seed seed of all random numbers
 * @param threads threads to use; changes no result
 */
public record ComparisonOptions(boolean withDemonstrations, List<String> trials, List<String> sheets, int draws, long seed, int threads) {

  private static final int DRAWS = 10_000;
  private static final long SEED = 20_260_101;

  public ComparisonOptions {
    trials = List.copyOf(trials);
    sheets = List.copyOf(sheets);
    if (threads < 1) {
      throw new IllegalArgumentException("At least one thread is needed, not " + threads);
    }
  }

  /** Everything but demonstrations, with the standard draws and seed, on all cores. */
  public static ComparisonOptions standard() {
    return new ComparisonOptions(false, List.of(), List.of(), DRAWS, SEED, Runtime.getRuntime().availableProcessors());
  }

  /** The remains of the trials that these options ask for. */
  List<SheetData> trialsOf(StudySnapshot snapshot) {
    return snapshot.trials().stream().filter(t -> t.isCompared(withDemonstrations)).filter(t -> isWanted(trials, t.id(), t.name()))
        .map(TrialData::found).toList();
  }

  /** The evidence sheets that these options ask for. */
  List<SheetData> sheetsOf(StudySnapshot snapshot) {
    return snapshot.sheets().stream().map(EvidenceData::sheet).filter(s -> isWanted(sheets, s.id(), s.name())).toList();
  }

  private static boolean isWanted(List<String> wanted, String id, String name) {
    return wanted.isEmpty() || wanted.contains(id) || wanted.contains(name);
  }
}
