package daubline.analysis.checks;

import daubline.analysis.StudySettings;

/** Settings of the comparison that cannot be used. */
final class SettingCheck implements Check {

  @Override
  public String id() {
    return "setting";
  }

  @Override
  public String description() {
    return "Weights, tolerances and limits of the comparison that cannot be read or belong to nothing.";
  }

  @Override
  public void run(CheckedStudy study) {
    StudySettings.check(study.study()).forEach(finding -> study.report(finding, study.study(), ""));
  }
}
