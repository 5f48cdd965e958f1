package daubline.analysis;

import daubline.engine.inference.ComparisonSettings;
import daubline.engine.inference.SheetData;
import java.util.List;

/**
 * What to compare and how exactly.
 *
 * @param withDemonstrations whether demonstrations take part
 * @param trials ids or names of the trials to compare; empty for all
 * @param sheets ids or names of the sheets (or sites) to compare with; empty for all
 * @param draws Monte Carlo draws
 * @param seed seed of all random numbers
 * @param threads threads to use; changes no result
 * @param against what the trials are compared with
 * @param repeatsAsTolerance whether the spread of repeats replaces the tolerances that it is known for
 */
public record ComparisonOptions(boolean withDemonstrations, List<String> trials, List<String> sheets, int draws, long seed, int threads,
    Against against, boolean repeatsAsTolerance) {

  private static final int DRAWS = 10_000;
  private static final long SEED = 20_260_101;

  public ComparisonOptions {
    trials = List.copyOf(trials);
    sheets = List.copyOf(sheets);
    if (threads < 1) {
      throw new IllegalArgumentException("At least one thread is needed, not " + threads);
    }
  }

  /** Against each evidence sheet, with the tolerances of the study. */
  public ComparisonOptions(boolean withDemonstrations, List<String> trials, List<String> sheets, int draws, long seed, int threads) {
    this(withDemonstrations, trials, sheets, draws, seed, threads, Against.SHEET, false);
  }

  /** Everything but demonstrations, with the standard draws and seed, on all cores. */
  public static ComparisonOptions standard() {
    return new ComparisonOptions(false, List.of(), List.of(), DRAWS, SEED, Runtime.getRuntime().availableProcessors());
  }

  /** The same against something else. */
  public ComparisonOptions against(Against other) {
    return new ComparisonOptions(withDemonstrations, trials, sheets, draws, seed, threads, other, repeatsAsTolerance);
  }

  /** The same with the spread of repeats as tolerance, or without. */
  public ComparisonOptions repeatsAsTolerance(boolean wanted) {
    return new ComparisonOptions(withDemonstrations, trials, sheets, draws, seed, threads, against, wanted);
  }

  /** Whether results under other options say the same of a trial and a sheet that both ask for: threads, and which are asked for, change nothing. */
  public boolean isLike(ComparisonOptions other) {
    return draws == other.draws && seed == other.seed && against == other.against && repeatsAsTolerance == other.repeatsAsTolerance;
  }

  /** The settings of the engine for a study under these options. */
  public ComparisonSettings settingsOf(StudySnapshot snapshot) {
    ComparisonSettings settings = snapshot.settings().with(draws, seed, threads);
    return repeatsAsTolerance ? StudyRepeats.of(snapshot, this).applyTo(settings) : settings;
  }

  /** The trials that these options ask for. */
  public List<TrialData> comparedTrials(StudySnapshot snapshot) {
    return snapshot.trials().stream().filter(t -> t.isCompared(withDemonstrations)).filter(t -> isWanted(trials, t.id(), t.name())).toList();
  }

  /** The remains of the trials that these options ask for. */
  List<SheetData> trialsOf(StudySnapshot snapshot) {
    return comparedTrials(snapshot).stream().map(TrialData::found).map(Preservation::seen).toList();
  }

  /** What these options compare the trials with. */
  public List<Target> targets(StudySnapshot snapshot) {
    if (against == Against.TRIAL) {
      return Targets.ofTrials(snapshot.trials().stream().filter(t -> t.isCompared(withDemonstrations)).filter(t -> isWanted(sheets, t.id(), t.name()))
          .map(TrialData::found).map(Preservation::seen).toList());
    }
    return Targets.of(against, snapshot.sheets().stream().filter(e -> isWanted(sheets, e.sheet().id(), e.sheet().name())
        || !sheets.isEmpty() && isWanted(sheets, e.siteId(), e.site())).map(EvidenceData::seen).toList());
  }

  private static boolean isWanted(List<String> wanted, String id, String name) {
    return wanted.isEmpty() || wanted.contains(id) || wanted.contains(name);
  }
}
