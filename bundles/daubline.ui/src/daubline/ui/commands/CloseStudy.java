package daubline.ui.commands;

import daubline.ui.study.OpenStudy;
import daubline.ui.study.Start;

/** Closes the current study after asking about unsaved changes. */
public final class CloseStudy extends StudyHandler {

  @Override
  void run(OpenStudy study) {
    Start.close(study);
  }
}
