package daubline.record;

import daubline.base.DecimalSign;
import daubline.base.Variables;
import daubline.session.StudySession;
import daubline.session.StudyVariables;
import java.util.function.Supplier;

/**
 * Where somebody writes: the open study, the decimal sign in use and the language of the words.
 *
 * @param session the open study
 * @param decimal the decimal sign of what is typed
 * @param words the words of headings, choices and the names of changes
 */
public record Desk(StudySession session, Supplier<DecimalSign> decimal, RecordWords words) {

  /** The variables of the study. */
  public Variables variables() {
    return StudyVariables.of(session.study());
  }

  /** Changes the study under a name that undo shows. */
  public void edit(String key, Object part, Runnable steps) {
    session.edit(words.of(key, part), steps);
  }
}
