package daubline.cli;

import daubline.session.StudyException;
import daubline.session.StudySession;
import java.nio.file.Path;
import picocli.CommandLine.Parameters;

/** The study that a command works on. */
final class StudyArgument {

  @Parameters(index = "0", paramLabel = "STUDY", description = "folder of the study")
  private Path folder;

  Path folder() {
    return folder;
  }

  /** Opens it to read; refused while somebody records blind. */
  StudySession read() throws StudyException {
    return Blindness.lifted(StudySession.read(folder));
  }

  /** Opens it to change it; refused while somebody records blind. */
  StudySession open() throws StudyException {
    return Blindness.lifted(StudySession.open(folder));
  }

  /** Opens it for a command that shows nothing of run and evidence. */
  StudySession unread() throws StudyException {
    return StudySession.read(folder);
  }

  /** Opens it for a command that shows and changes nothing of run and evidence. */
  StudySession unreadToChange() throws StudyException {
    return StudySession.open(folder);
  }
}
