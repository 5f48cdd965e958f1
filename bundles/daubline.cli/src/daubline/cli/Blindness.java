package daubline.cli;

import daubline.base.Finding;
import daubline.model.BlindRecording;
import daubline.session.BlindRecordings;
import daubline.session.StudyException;
import daubline.session.StudySession;
import java.nio.file.Path;

/** While somebody records blind, commands neither show nor change run and evidence of the study; this says why and how to end it. */
final class Blindness {

  private Blindness() {
  }

  /**
   * A study for a command that shows or changes run or evidence.
   *
   * @param session the study as opened; closed when it is refused
   * @throws StudyException while somebody records blind in it
   */
  static StudySession lifted(StudySession session) throws StudyException {
    if (isOn(session)) {
      BlindRecording on = BlindRecordings.current(session.study()).orElseThrow();
      Path folder = session.folder();
      session.close();
      throw new StudyException(Finding.error("blind.on", folder.toString(), who(on) + " records blind since " + on.getBegun()
          + ", so no command shows or changes run, remains or evidence of this study",
          "daubline blind " + folder + " --end --by NAME ends it; who ended it and when is kept"));
    }
    return session;
  }

  /** Whether somebody records blind in a study. */
  static boolean isOn(StudySession session) {
    return BlindRecordings.current(session.study()).isPresent();
  }

  private static String who(BlindRecording recording) {
    return recording.getBy() == null || recording.getBy().getName() == null ? "somebody" : recording.getBy().getName();
  }
}
