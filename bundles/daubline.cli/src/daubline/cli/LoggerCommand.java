package daubline.cli;

import daubline.intake.logger.ChannelLayout;
import daubline.intake.logger.LoggerIntake;
import daubline.intake.logger.LoggerLayout;
import daubline.intake.logger.LoggerPreview;
import daubline.intake.logger.LoggerSeries;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes a logger's file into a trial, after a preview. */
@Command(name = "logger", mixinStandardHelpOptions = true,
    description = "Say how a logger's file would be taken into a trial; with --apply take it, the raw file kept untouched.")
final class LoggerCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Parameters(index = "1", paramLabel = "FILE", description = "the file as the logger wrote it")
  private Path file;

  @Option(names = "--trial", required = true, paramLabel = "TRIAL", description = "id or name of the trial")
  private String trial;

  @Mixin
  private IntakeArguments intake;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = intake.open(study)) {
      LoggerPreview preview = LoggerIntake.preview(session, file, trial, intake.options());
      preview.layout().ifPresent(layout -> print(layout, preview.series().orElseThrow(), preview.startAt().orElse("not known")));
      int wrong = Out.findings(preview.findings());
      return intake.finish(session, wrong, preview.canApply(), preview.changesAnything(), () -> preview.apply(session));
    }
  }

  private static void print(LoggerLayout layout, LoggerSeries series, String start) {
    Out.line("%s, first at %s, data below row %d, times in column %d as %s, decimal %s, %s", Out.count(series.size(), "row"), start,
        layout.headerRows(), layout.timeColumn(), layout.time().text(), layout.decimal().name().toLowerCase(java.util.Locale.ROOT),
        Out.count(series.gaps().size(), "gap"));
    for (int i = 0; i < layout.channels().size(); i++) {
      ChannelLayout channel = layout.channels().get(i);
      Out.line("  column %d, %s [%s] → %s; states: %s", channel.column(), channel.name(), channel.unitText(),
          channel.variable().isEmpty() ? "no variable" : channel.variable(), String.join(", ", series.channels().get(i).states()));
    }
  }
}
