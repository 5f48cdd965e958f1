package daubline.cli;

import daubline.analysis.Snapshots;
import daubline.analysis.record.CitationData;
import daubline.analysis.record.StudyRecord;
import daubline.export.Discretion;
import daubline.export.format.Bibliography;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Writes the citations of a study for programs that keep references. */
@Command(name = "citations", mixinStandardHelpOptions = true, description = "Write the citations of a study into a file for programs that keep references: "
    + "BibTeX (.bib) or RIS (.ris). The way back: import STUDY refs.bib --as citations.")
final class CitationsCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Parameters(index = "1", paramLabel = "FILE", description = "file whose name ends in .bib or .ris")
  private Path file;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = study.unread()) {
      StudyRecord record = Snapshots.of(session).record();
      List<CitationData> citations = new Discretion(record.people()).citations(record.citations());
      Bibliography.write(citations, file);
      Out.line("wrote %s into %s", Out.count(citations.size(), "citation"), file);
      return Out.DONE;
    }
  }
}
