package daubline.ui.commands;

import daubline.ui.study.OpenStudy;
import daubline.ui.table.Imports;

/** Takes a table over into the current study, after a preview. */
public final class ImportTable extends StudyHandler {

  @Override
  boolean can(OpenStudy study) {
    // what comes in is evidence as often as not
    return !study.session().isReadOnly() && study.blind().isEmpty();
  }

  @Override
  void run(OpenStudy study) {
    Imports.choose();
  }
}
