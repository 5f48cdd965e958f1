package daubline.cli;

import daubline.analysis.design.RunSheet;
import daubline.analysis.design.RunSheets;
import daubline.charts.Figure;
import daubline.charts.PdfWriter;
import daubline.charts.RunSheetPage;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints the run sheets. */
@Command(name = "sheet", mixinStandardHelpOptions = true, description = "Write a run sheet for each trial to be burnt: two black A4 pages, in one PDF in the order of the plan.")
final class DesignSheet implements Callable<Integer> {

  @Mixin
  private SeriesArgument series;

  @Option(names = "--to", paramLabel = "FILE", defaultValue = "run-sheets.pdf", description = "where to write (default: ${DEFAULT-VALUE})")
  private Path file;

  @Option(names = "--all", description = "trials burnt already as well")
  private boolean all;

  @Override
  public Integer call() throws Exception {
    return series.read((session, snapshot, data) -> {
      List<RunSheet> sheets = RunSheets.of(session, snapshot, data, all);
      if (sheets.isEmpty()) {
        Out.line("there is no trial to be burnt in %s; freeze a plan first, or use --all", data.name());
        return Out.WRONG;
      }
      List<Figure> pages = sheets.stream().flatMap(s -> RunSheetPage.of(s).stream()).toList();
      if (file.toAbsolutePath().getParent() != null) {
        Files.createDirectories(file.toAbsolutePath().getParent());
      }
      try (OutputStream out = Files.newOutputStream(file)) {
        new PdfWriter(Instant.EPOCH).pages(pages, "Run sheets of " + data.name(), RunSheetPage.WIDTH_MM, out);
      }
      Out.line("wrote %d run sheets to %s", sheets.size(), file);
      return Out.DONE;
    });
  }
}
