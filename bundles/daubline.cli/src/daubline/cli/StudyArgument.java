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

  /** Opens it to read. */
  StudySession read() throws StudyException {
    return StudySession.read(folder);
  }

  /** Opens it to change it. */
  StudySession open() throws StudyException {
    return StudySession.open(folder);
  }
}
