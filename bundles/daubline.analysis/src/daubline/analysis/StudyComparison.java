package daubline.analysis;

import daubline.analysis.checks.Checks;
import daubline.base.Finding;
import daubline.criteria.Criteria;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.ComparisonEngine;
import daubline.engine.inference.ComparisonSettings;
import daubline.engine.inference.Progress;
import daubline.session.StudySession;
import java.util.ArrayList;
import java.util.List;

/** Compares the trials of a study with its evidence sheets. */
public final class StudyComparison {

  private StudyComparison() {
  }

  /** Checks and compares the study of a session as it stands now. */
  public static StudyResults of(StudySession session, ComparisonOptions options) {
    return of(Snapshots.of(session), Checks.run(session), options, Progress.NONE);
  }

  /**
   * Compares a snapshot; needs no session, so it can run behind while the study is edited.
   *
   * @param snapshot the study as it stood
   * @param checks what the integrity checks found then
   * @param progress told how far it has come, and asked whether to go on
   */
  public static StudyResults of(StudySnapshot snapshot, List<Finding> checks, ComparisonOptions options, Progress progress) {
    ComparisonSettings settings = snapshot.settings().with(options.draws(), options.seed(), options.threads());
    List<Comparison> comparisons = new ComparisonEngine(Criteria.all(), settings).compare(options.trialsOf(snapshot), options.sheetsOf(snapshot), progress);
    List<Finding> findings = new ArrayList<>(checks);
    findings.addAll(settings.check(Criteria.all()));
    return new StudyResults(snapshot, comparisons, findings);
  }
}
