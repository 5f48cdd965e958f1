package daubline.ui.commands;

import daubline.ui.study.OpenStudy;
import daubline.ui.study.Start;
import daubline.ui.study.Studies;

/** Saves every open study that has changes. */
public final class SaveAll extends StudyHandler {

  @Override
  boolean can(OpenStudy study) {
    return Studies.get().all().stream().anyMatch(s -> s.session().isDirty());
  }

  @Override
  void run(OpenStudy study) {
    Studies.get().all().stream().filter(s -> s.session().isDirty()).forEach(Start::save);
  }
}
