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
    ComparisonSettings settings = options.settingsOf(snapshot);
    List<SheetData> targets = options.targets(snapshot).stream().map(Target::sheet).toList();
    List<Comparison> comparisons = new ComparisonEngine(Criteria.all(), settings).compare(options.trialsOf(snapshot), targets, progress).stream()
        .filter(c -> !c.trial().equals(c.sheet())).toList();
    return new StudyResults(snapshot, comparisons, checks);
  }
}
