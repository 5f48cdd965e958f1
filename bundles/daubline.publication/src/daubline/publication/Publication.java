package daubline.publication;

import daubline.analysis.StudyResults;
import daubline.charts.Figure;
import daubline.charts.FigureSpec;
import daubline.charts.FigureWriter;
import daubline.charts.Figures;
import daubline.charts.PdfWriter;
import daubline.charts.PngWriter;
import daubline.charts.SvgWriter;
import daubline.export.Discretion;
import daubline.export.Provenance;
import daubline.export.Table;
import daubline.export.Tables;
import daubline.export.format.ArchiveCsv;
import daubline.export.format.Latex;
import daubline.export.format.Markdown;
import daubline.export.format.SpreadsheetCsv;
import daubline.export.format.WordWriter;
import daubline.export.format.WorkbookWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;

/** Writes all tables, figures and the report of a study into one folder. The same study and options give the same bytes. */
public final class Publication {

  private final StudyResults results;
  private final Output output;
  private final PublicationOptions options;
  private final Progress progress;
  private final List<Table> tables;
  private final List<Drawn> figures = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();

  private Publication(StudyResults results, Path folder, PublicationOptions options, Progress progress) {
    this.results = results;
    this.output = new Output(folder);
    this.options = options;
    this.progress = progress;
    Discretion discretion = new Discretion(results.snapshot().record().people());
    this.tables = Tables.all().stream().map(spec -> discretion.table(spec.build(results))).toList();
    for (FigureSpec spec : Figures.all()) {
      Optional<Figure> figure = spec.build(results);
      figure.ifPresentOrElse(f -> figures.add(new Drawn(spec.id(), spec.title(), f)),
          () -> remarks.add("Figure “" + spec.title() + "” is left out: the study holds nothing to draw in it"));
    }
  }

  /** A figure of this study with its names. */
  record Drawn(String id, String title, Figure figure) {
  }

  /**
   * What was written.
   *
   * @param files the files in the order in which they were written
   * @param remarks what could not be written as it was, and which figures the study has no data for
   */
  public record Written(List<Path> files, List<String> remarks) {

    public Written {
      files = List.copyOf(files);
      remarks = List.copyOf(remarks);
    }
  }

  /** Writes everything without telling how far it has come. */
  public static Written write(StudyResults results, Path folder, PublicationOptions options) throws IOException {
    return write(results, folder, options, Progress.NONE);
  }

  /**
   * Writes the workbook, the tables in each form, the figures and the report.
   *
   * @param results what was worked out
   * @param folder where to; made when it does not exist; files of an earlier run are replaced
   * @param options how
   * @param progress told what is written, and asked whether to go on
   * @throws IOException when a file cannot be written
   * @throws CancellationException when progress says stop
   */
  public static Written write(StudyResults results, Path folder, PublicationOptions options, Progress progress) throws IOException {
    Publication publication = new Publication(results, folder, options, progress);
    publication.workbook();
    publication.tables();
    publication.document();
    publication.figures();
    publication.report();
    return new Written(publication.output.files(), publication.remarks);
  }

  private void step(String what) {
    if (!progress.next(what)) {
      throw new CancellationException("Stopped before: " + what);
    }
  }

  private void workbook() throws IOException {
    step("workbook");
    try (OutputStream out = output.file("tables.xlsx")) {
      remarks.addAll(new WorkbookWriter(provenance()).write(tables, out));
    }
  }

  private Provenance provenance() {
    return new Provenance(results.snapshot().name(), results.snapshot().digest(), options.version(), options.settings(), options.when());
  }

  private void tables() throws IOException {
    SpreadsheetCsv spreadsheet = new SpreadsheetCsv(options.style().decimalComma());
    for (Table table : tables) {
      step("table " + table.title());
      output.text("archive/" + table.id() + ".csv", new ArchiveCsv().text(table));
      output.text("spreadsheet/" + table.id() + ".csv", spreadsheet.text(table));
      output.text("markdown/" + table.id() + ".md", new Markdown(options.style()).text(table));
      output.text("latex/" + table.id() + ".tex", new Latex(options.style()).text(table));
    }
    if (!spreadsheet.guarded().isEmpty()) {
      StringBuilder list = new StringBuilder("Text that a spreadsheet might take for a formula has an apostrophe before it in these cells:\n");
      spreadsheet.guarded().forEach(g -> list.append(g.table()).append(".csv, row ").append(g.row()).append(", column ").append(g.column()).append('\n'));
      output.text("spreadsheet/guarded.txt", list.toString());
    }
  }

  private void document() throws IOException {
    step("tables as a document");
    try (OutputStream out = output.file("tables.docx"); WordWriter document = new WordWriter(provenance(), options.style())) {
      document.heading(results.snapshot().name(), 1);
      for (int i = 0; i < tables.size(); i++) {
        document.table(tables.get(i), i + 1);
      }
      document.write(out);
    }
  }

  private void figures() throws IOException {
    StringBuilder captions = new StringBuilder();
    for (int i = 0; i < figures.size(); i++) {
      Drawn drawn = figures.get(i);
      step("figure " + drawn.title());
      for (FigureWriter writer : writers()) {
        try (OutputStream out = output.file("figures/" + drawn.id() + "." + writer.ending())) {
          writer.write(drawn.figure(), drawn.title(), widthMm(drawn.figure()), out);
        }
      }
      captions.append("Figure ").append(i + 1).append(" (").append(drawn.id()).append("). ").append(drawn.title()).append(". ")
          .append(drawn.figure().caption()).append("\n\n");
    }
    output.text("figures/captions.txt", captions.toString());
  }

  private double widthMm(Figure figure) {
    return Double.isNaN(options.widthMm()) ? figure.widthMm() : options.widthMm();
  }

  private List<FigureWriter> writers() {
    List<FigureWriter> writers = List.of(new PngWriter(options.dpi()), new SvgWriter(), new PdfWriter(options.when()));
    return writers.stream().filter(w -> options.formats().contains(w.ending())).toList();
  }

  private void report() throws IOException {
    step("report");
    Report report = new Report(results, tables, figures, provenance(), options.style());
    output.text("report.html", report.html());
    try (OutputStream out = output.file("report.docx")) {
      report.word(out);
    }
  }
}
