package daubline.cli;

import daubline.publication.Publication;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Says what was published and where it is, in a few lines. */
final class PublicationText {

  private PublicationText() {
  }

  /** Prints the summary; the exit code says whether something is wrong with what was written. */
  static int print(Publication.Written written, Path folder) {
    written.remarks().forEach(Out::line);
    int wrong = written.findings().isEmpty() ? Out.DONE : Out.findings(written.findings());
    int tables = written.tables().size();
    written.files().stream().filter(f -> f.startsWith("filled/")).forEach(f -> Out.line("template: filled as %s", f));
    Map<String, Long> files = written.files().stream().filter(f -> f.contains("/"))
        .collect(Collectors.groupingBy(f -> f.substring(0, f.indexOf('/')), TreeMap::new, Collectors.counting()));
    Out.line("");
    Out.line("%d tables: all in tables.xlsx and tables.docx, one a file in archive, spreadsheet, markdown and latex", tables);
    Out.line("%d figures: in figures as %s", written.figures().size(), endings(written));
    Out.line("report: report.html and report.docx, with everything in its place and a trail for every value");
    Out.line("handout: handout.html and handout.docx, in plain words, without names of people who did not consent");
    if (files.containsKey("deposit")) {
      Out.line("deposit: %d files, %s", files.get("deposit"), wrong == Out.DONE ? "validated and read again without loss" : "not fit to be handed over");
    }
    Out.line("all in %s", folder.toAbsolutePath().normalize());
    return wrong;
  }

  private static String endings(Publication.Written written) {
    String endings = written.files().stream().filter(f -> f.startsWith("figures/") && !f.endsWith(".txt")).map(f -> f.substring(f.lastIndexOf('.') + 1))
        .distinct().sorted().collect(Collectors.joining(", "));
    return endings.isEmpty() ? "captions only" : endings;
  }
}
