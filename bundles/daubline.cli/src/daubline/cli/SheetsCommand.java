package daubline.cli;

import daubline.base.DecimalSign;
import daubline.record.Desk;
import daubline.record.print.FieldSheets;
import daubline.session.StudySession;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Prints blank field sheets. */
@Command(name = "sheets", mixinStandardHelpOptions = true,
    description = "Write blank field sheets with the columns of the screens, the keys of the day and the briefing with lines to sign, as PDF; without --trial its name is left blank.")
final class SheetsCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Mixin
  private PaperArguments paper;

  @Override
  public Integer call() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Set<String> lost;
    try (StudySession session = study.read()) {
      lost = new FieldSheets(new Desk(session, () -> DecimalSign.POINT, paper.words()), paper.trial(session)).write(paper.paper(), out);
    }
    Files.write(paper.out(), out.toByteArray());
    Out.line("wrote %s", paper.out());
    return PaperArguments.told(lost);
  }
}
