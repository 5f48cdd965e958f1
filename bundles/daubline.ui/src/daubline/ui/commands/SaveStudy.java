package daubline.ui.commands;

import daubline.ui.Words;
import daubline.ui.look.StatusLine;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Start;

/** Saves the current study. */
public final class SaveStudy extends StudyHandler {

  @Override
  boolean can(OpenStudy study) {
    return study.session().isDirty();
  }

  @Override
  void run(OpenStudy study) {
    if (Start.save(study)) {
      StatusLine.say(Words.of("save.done", study.name()));
    }
  }
}
