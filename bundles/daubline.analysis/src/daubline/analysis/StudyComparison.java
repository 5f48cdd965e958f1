package daubline.analysis;

import daubline.analysis.checks.Checks;
import daubline.base.Finding;
import daubline.criteria.Criteria;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.ComparisonEngine;
import daubline.engine.inference.ComparisonSettings;
import daubline.engine.inference.Progress;
import daubline.engine.inference.SheetData;
import daubline.session.StudySession;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Compares the trials of a study with its evidence sheets, groups of them, or each other. */
public final class StudyComparison {

  private StudyComparison() {
  }

  /** Checks and compares the study of a session as it stands now. */
  public static StudyResults of(StudySession session, ComparisonOptions options) {
    return of(Snapshots.of(session), Checks.run(session), options, Progress.NONE);
  }

  /**
   * Compares a snapshot; needs no session, so it can run behind while the study is edited. A trial is not compared with itself.
   *
   * @param snapshot the study as it stood
   * @param checks what the integrity checks found then
   * @param progress told how far it has come, and asked whether to go on
   */
  public static StudyResults of(StudySnapshot snapshot, List<Finding> checks, ComparisonOptions options, Progress progress) {
    return of(snapshot, checks, options, Optional.empty(), progress);
  }

  /**
   * The same after an edit: what two sheets that did not change say of each other is taken from before.
   *
   * @param before results of the same study, if there are any; those with other options are not used
   */
  public static StudyResults of(StudySnapshot snapshot, List<Finding> checks, ComparisonOptions options, Optional<StudyResults> before,
      Progress progress) {
    ComparisonSettings settings = options.settingsOf(snapshot);
    List<SheetData> targets = options.targets(snapshot).stream().map(Target::sheet).toList();
    Unchanged unchanged = before.filter(b -> b.options().isLike(options)).filter(b -> options.settingsOf(b.snapshot()).equals(settings)).map(b -> Unchanged.of(b, options)).orElse(Unchanged.NOTHING);
    List<Comparison> comparisons = new ComparisonEngine(Criteria.all(), settings).compare(options.trialsOf(snapshot), targets, unchanged::comparison, progress)
        .stream().filter(c -> !c.trial().equals(c.sheet())).toList();
    return new StudyResults(snapshot, options, comparisons, checks);
  }

  /** Earlier comparisons with the sheets that they were made of. */
  private record Unchanged(Map<String, SheetData> trials, Map<String, SheetData> targets, StudyResults results) {

    static final Unchanged NOTHING = new Unchanged(Map.of(), Map.of(), null);

    static Unchanged of(StudyResults before, ComparisonOptions options) {
      return new Unchanged(byId(options.trialsOf(before.snapshot())), byId(options.targets(before.snapshot()).stream().map(Target::sheet).toList()), before);
    }

    private static Map<String, SheetData> byId(List<SheetData> sheets) {
      return sheets.stream().collect(Collectors.toMap(SheetData::id, s -> s, (a, b) -> a));
    }

    Optional<Comparison> comparison(SheetData trial, SheetData sheet) {
      boolean same = trial.equals(trials.get(trial.id())) && sheet.equals(targets.get(sheet.id()));
      return same ? results.comparison(trial.id(), sheet.id()) : Optional.empty();
    }
  }
}
