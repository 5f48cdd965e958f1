package daubline.cli;

import daubline.model.Sample;
import daubline.model.Trial;
import daubline.record.print.Labels;
import daubline.session.StudySession;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Prints labels for samples. */
@Command(name = "labels", mixinStandardHelpOptions = true,
    description = "Write labels of samples with letters and Code 128 bars as PDF, of one trial or of all.")
final class LabelsCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Mixin
  private PaperArguments paper;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = study.read()) {
      Trial trial = paper.trial(session);
      List<Sample> samples = session.study().getSeries().stream().flatMap(s -> s.getTrials().stream()).filter(t -> trial == null || t == trial)
          .flatMap(t -> t.getSamples().stream()).toList();
      if (samples.isEmpty()) {
        throw new IllegalArgumentException("there is no sample to label; enter samples first");
      }
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      Set<String> lost = Labels.write(samples, paper.words(), paper.paper(), out);
      Files.write(paper.out(), out.toByteArray());
      Out.line("wrote %s into %s", Out.count(samples.size(), "label"), paper.out());
      return PaperArguments.told(lost);
    }
  }
}
