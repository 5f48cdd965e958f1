package daubline.analysis.checks;

import daubline.base.Finding;
import daubline.session.StudySession;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** All integrity checks. */
public final class Checks {

  private static final List<Check> ALL = List.of(new ValueCheck(), new OriginCheck(), new OwnVariableCheck(), new CitationCheck(), new ContradictionCheck(),
      new PreservationCheck(), new NameCheck(), new MassCheck(), new AnalysisCheck(), new TrialCheck(), new TeamCheck(), new LogCheck(), new FileCheck(), new SettingCheck());

  private Checks() {
  }

  /** Every check. */
  public static List<Check> all() {
    return ALL;
  }

  /** Runs every check; what was noticed on opening comes first, then errors before warnings before notes. */
  public static List<Finding> run(StudySession session) {
    CheckedStudy study = new CheckedStudy(session);
    ALL.forEach(check -> check.run(study));
    List<Finding> findings = new ArrayList<>(session.findings());
    findings.addAll(study.findings());
    findings.sort(Comparator.comparing(Finding::severity));
    return findings;
  }
}
