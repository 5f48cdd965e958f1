package daubline.ui.commands;

import daubline.ui.study.OpenStudy;

/** Works out checks and comparison of the current study again. */
public final class WorkOut extends StudyHandler {

  @Override
  void run(OpenStudy study) {
    study.recompute();
  }
}
