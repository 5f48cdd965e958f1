package daubline.ui.commands;

import daubline.ui.study.OpenStudy;
import daubline.ui.table.Imports;

/** Takes a table over into the current study, after a preview. */
public final class ImportTable extends StudyHandler {

  @Override
  boolean can(OpenStudy study) {
    return !study.session().isReadOnly();
  }

  @Override
  void run(OpenStudy study) {
    Imports.choose();
  }
}
