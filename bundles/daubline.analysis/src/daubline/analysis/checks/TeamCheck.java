package daubline.analysis.checks;

import daubline.base.TrialStatus;
import daubline.model.Hazard;
import daubline.model.Permission;
import daubline.model.RoleAssignment;
import daubline.model.Series;
import daubline.session.team.Readiness;
import daubline.session.team.Roles;
import java.util.Objects;

/** Roles, risks and permissions before the fire. A check knows no clock: reviews are judged by the last day of a trial to come. */
final class TeamCheck implements Check {

  @Override
  public String id() {
    return "team";
  }

  @Override
  public String description() {
    return "People in two roles at once, reliefs that leave a gap, needed roles that nobody has; hazards without control or owner, or whose review is due "
        + "before a trial to come; permissions that end before they begin.";
  }

  @Override
  public void run(CheckedStudy study) {
    study.each(RoleAssignment.class, role -> Roles.of(role).ifPresent(f -> study.report(f, role, null)));
    study.each(Series.class, series -> Roles.of(series).forEach(f -> study.report(f, series, null)));
    study.each(Permission.class, permission -> Readiness.turned(permission).ifPresent(f -> study.report(f, permission, null)));
    String last = study.study().getSeries().stream().flatMap(s -> s.getTrials().stream())
        .filter(t -> TrialStatus.of(t.getStatus()).isToCome())
        .map(t -> t.getOn()).filter(Objects::nonNull).max(String::compareTo).orElse("");
    study.each(Hazard.class, hazard -> Readiness.of(hazard, last).ifPresent(f -> study.report(f, hazard, null)));
  }
}
