package daubline.analysis.design;

import daubline.analysis.StudySnapshot;
import daubline.analysis.record.SeriesData;
import daubline.model.RoleAssignment;
import daubline.model.Series;
import daubline.session.StudySession;
import java.util.List;

/** Makes the run sheets of a series. */
public final class RunSheets {

  private RunSheets() {
  }

  /** The sheets of the trials to be burnt, or of all trials; the team sees its own names, since a sheet stays with the team. */
  public static List<RunSheet> of(StudySession session, StudySnapshot study, SeriesData data, boolean all) {
    Series series = SeriesSetup.find(session, data.id());
    List<RunSheet.Line> roles = series.getRoles().stream().map(RunSheets::role).toList();
    return RunSheet.of(study, data, roles, series.getStopCriteria() == null ? "" : series.getStopCriteria(), all);
  }

  private static RunSheet.Line role(RoleAssignment role) {
    String times = role.getFrom() == null ? "" : " " + role.getFrom() + (role.getUntil() == null ? "" : "–" + role.getUntil());
    return new RunSheet.Line((role.getRole() == null ? "" : role.getRole()) + times, role.getPerson() == null ? "" : String.valueOf(role.getPerson().getName()));
  }
}
