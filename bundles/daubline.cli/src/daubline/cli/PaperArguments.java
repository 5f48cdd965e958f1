package daubline.cli;

import daubline.model.Trial;
import daubline.record.RecordWords;
import daubline.record.print.PaperSize;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import picocli.CommandLine.Option;

/** What goes onto paper, and which paper. */
final class PaperArguments {

  @Option(names = {"-o", "--out"}, required = true, paramLabel = "FILE", description = "the PDF file to write")
  private Path out;

  @Option(names = "--trial", paramLabel = "TRIAL", description = "id or name of the trial")
  private String trial;

  @Option(names = "--paper", paramLabel = "SIZE", defaultValue = "a4", description = "a4 or letter (default: ${DEFAULT-VALUE})")
  private PaperSize paper;

  @Option(names = "--language", paramLabel = "CODE", defaultValue = "en", description = "en or de (default: ${DEFAULT-VALUE})")
  private String language;

  /** Says which signs are question marks on the paper; the exit code is that of work done. */
  static int told(Set<String> lost) {
    if (!lost.isEmpty()) {
      Out.line("no typeface of this machine has these signs, so a question mark stands for each: %s", String.join(" ", lost));
    }
    return Out.DONE;
  }

  Path out() {
    return out;
  }

  PaperSize paper() {
    return paper;
  }

  RecordWords words() {
    return new RecordWords(Locale.forLanguageTag(language));
  }

  /**
   * The trial that was named; null when none was.
   *
   * @throws IllegalArgumentException when the name is not that of one trial
   */
  Trial trial(StudySession session) {
    if (trial == null) {
      return null;
    }
    List<Trial> found = session.study().getSeries().stream().flatMap(s -> s.getTrials().stream()).filter(t -> trial.equals(t.getId()) || trial.equals(t.getName())).toList();
    if (found.size() != 1) {
      throw new IllegalArgumentException("“" + trial + "” names " + found.size() + " trials; name one by its id");
    }
    return found.get(0);
  }
}
