package daubline.analysis.checks;

import daubline.base.Finding;
import daubline.base.TrialStatus;
import daubline.model.Permission;
import daubline.model.Series;
import daubline.model.Trial;

/** Trials: fired without remains, ready without stop criteria or with an expired permission, repeats of nothing. */
final class TrialCheck implements Check {

  @Override
  public String id() {
    return "trial";
  }

  @Override
  public String description() {
    return "Fired trials without a remains sheet, trials that are ready without stop criteria or with an expired permission, "
        + "exclusions without a reason.";
  }

  @Override
  public void run(CheckedStudy study) {
    study.eachTrial(trial -> check(study, trial));
  }

  private void check(CheckedStudy study, Trial trial) {
    TrialStatus status = trial.getStatus() == null ? TrialStatus.PLANNED : trial.getStatus();
    boolean burnt = status == TrialStatus.FIRED || status == TrialStatus.RECORDED || status == TrialStatus.FAILED;
    if (burnt && trial.getRemains() == null) {
      study.report(Finding.warning("trial.remains", "", "it was fired, but its remains are not recorded",
          "record the remains as though excavated; until then nothing of it can be compared"), trial, null);
    }
    if (status == TrialStatus.READY) {
      checkReady(study, trial);
    }
    if (trial.isExcluded() && (trial.getExcludedBecause() == null || trial.getExcludedBecause().isBlank())) {
      study.report(Finding.warning("trial.excluded", "", "it is left out of comparison without a reason", "say why"), trial, null);
    }
    if (trial.getKind() == daubline.base.TrialKind.REPEAT && trial.getRepeatOf() == null) {
      study.report(Finding.warning("trial.repeat", "", "it is a repeat, but of no trial", "choose the trial it repeats"), trial, null);
    }
  }

  private void checkReady(CheckedStudy study, Trial trial) {
    if (trial.eContainer() instanceof Series series && (series.getStopCriteria() == null || series.getStopCriteria().isBlank())) {
      study.report(Finding.error("trial.stop", "", "it is marked ready, but no stop criteria were agreed",
          "write the stop criteria of the series before the fire"), trial, null);
    }
    for (Permission permission : study.study().getPermissions()) {
      boolean expired = trial.getOn() != null && permission.getValidUntil() != null && permission.getValidUntil().compareTo(trial.getOn()) < 0;
      if (expired) {
        study.report(Finding.error("trial.permission", "", "the permission “" + permission.getName() + "” ends on " + permission.getValidUntil()
            + ", before the trial", "renew it, or choose another day; local rules decide"), trial, null);
      }
    }
  }
}
