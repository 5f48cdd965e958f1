package daubline.analysis.checks;

import daubline.base.Finding;
import daubline.base.TrialStatus;
import daubline.model.Trial;
import daubline.session.team.Readiness;

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
    TrialStatus status = TrialStatus.of(trial.getStatus());
    if (status.isBurnt() && trial.getRemains() == null) {
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

  /** What stands against it is an error, or a note when somebody said why it is ready all the same. */
  private void checkReady(CheckedStudy study, Trial trial) {
    for (Finding obstacle : Readiness.obstacles(study.study(), trial, "")) {
      String what = "it is marked ready, but " + obstacle.what();
      study.report(Readiness.isOverridden(trial) ? Finding.note(obstacle.code(), "", what + "; the reason given: " + trial.getReadyBecause(), obstacle.remedy())
          : Finding.error(obstacle.code(), "", what, obstacle.remedy() + ", or say why it is ready all the same"), trial, null);
    }
  }
}
