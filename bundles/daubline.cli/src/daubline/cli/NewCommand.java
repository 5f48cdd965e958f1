package daubline.cli;

import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Makes an empty study. */
@Command(name = "new", mixinStandardHelpOptions = true, description = "Make an empty study in a new folder.")
final class NewCommand implements Callable<Integer> {

  @Parameters(index = "0", paramLabel = "FOLDER", description = "the new folder")
  private Path folder;

  @Parameters(index = "1", paramLabel = "NAME", description = "name of the study")
  private String name;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = StudySession.create(folder, name)) {
      Out.line("made %s in %s", name, session.folder());
      return Out.DONE;
    }
  }
}
