package daubline.cli;

import daubline.base.Finding;
import daubline.publication.DepositReader;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Makes a study of a deposit. */
@Command(name = "read-deposit", mixinStandardHelpOptions = true, description = "Make a new study of a deposit, with its files.")
final class ReadDepositCommand implements Callable<Integer> {

  @Parameters(index = "0", paramLabel = "DEPOSIT", description = "folder of the deposit")
  private Path deposit;

  @Parameters(index = "1", paramLabel = "FOLDER", description = "the new folder of the study")
  private Path folder;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = StudySession.create(folder, "")) {
      List<Finding> findings = DepositReader.read(deposit, session);
      int wrong = Out.findings(findings);
      if (wrong == Out.DONE) {
        session.save();
        Out.line("made %s in %s", session.study().getName(), session.folder());
      }
      return wrong;
    }
  }
}
