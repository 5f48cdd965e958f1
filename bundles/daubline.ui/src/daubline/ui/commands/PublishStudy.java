package daubline.ui.commands;

import daubline.ui.look.Over;
import daubline.ui.publish.PublishWizard;
import daubline.ui.study.OpenStudy;

/** Writes everything that leaves the current study, after a preview. */
public final class PublishStudy extends StudyHandler {

  /** Shows run and evidence, so not while somebody records blind. */
  @Override
  boolean can(OpenStudy study) {
    return study.blind().isEmpty();
  }

  @Override
  void run(OpenStudy study) {
    PublishWizard.open(Over.shell(), study);
  }
}
