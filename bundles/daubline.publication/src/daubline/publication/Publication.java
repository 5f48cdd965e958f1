package daubline.publication;

import daubline.analysis.StudyResults;
import daubline.charts.Figure;
import daubline.charts.FigureSpec;
import daubline.charts.FigureWriter;
import daubline.charts.Figures;
import daubline.charts.PdfWriter;
import daubline.charts.PngWriter;
import daubline.charts.SvgWriter;
import daubline.export.Provenance;
import daubline.export.Table;
import daubline.export.Tables;
import daubline.export.format.ArchiveCsv;
import daubline.export.format.SpreadsheetCsv;
import daubline.export.format.WorkbookWriter;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes all tables and figures of a study into one folder. The same study and options give the same bytes. */
public final class Publication {

  private final StudyResults results;
  private final Path folder;
  private final PublicationOptions options;
  private final List<Path> files = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();

  private Publication(StudyResults results, Path folder, PublicationOptions options) {
    this.results = results;
    this.folder = folder;
    this.options = options;
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

  /**
   * Writes the workbook, the tables as text and the figures.
   *
   * @param results what was worked out
   * @param folder where to; made when it does not exist; files of an earlier run are replaced
   * @param options how
   * @throws IOException when a file cannot be written
   */
  public static Written write(StudyResults results, Path folder, PublicationOptions options) throws IOException {
    Publication publication = new Publication(results, folder, options);
    List<Table> tables = Tables.all().stream().map(spec -> spec.build(results)).toList();
    publication.workbook(tables);
    publication.csv(tables);
    publication.figures();
    return new Written(publication.files, publication.remarks);
  }

  private void workbook(List<Table> tables) throws IOException {
    try (OutputStream out = file("tables.xlsx")) {
      remarks.addAll(new WorkbookWriter(provenance()).write(tables, out));
    }
  }

  private Provenance provenance() {
    return new Provenance(results.snapshot().name(), results.snapshot().digest(), options.version(), options.settings(), options.when());
  }

  private void csv(List<Table> tables) throws IOException {
    SpreadsheetCsv spreadsheet = new SpreadsheetCsv(options.style().decimalComma());
    for (Table table : tables) {
      text("archive/" + table.id() + ".csv", new ArchiveCsv().text(table));
      text("spreadsheet/" + table.id() + ".csv", spreadsheet.text(table));
    }
    if (!spreadsheet.guarded().isEmpty()) {
      StringBuilder list = new StringBuilder("Text that a spreadsheet might take for a formula has an apostrophe before it in these cells:\n");
      spreadsheet.guarded().forEach(g -> list.append(g.table()).append(".csv, row ").append(g.row()).append(", column ").append(g.column()).append('\n'));
      text("spreadsheet/guarded.txt", list.toString());
    }
  }

  private void figures() throws IOException {
    StringBuilder captions = new StringBuilder();
    int number = 0;
    for (FigureSpec spec : Figures.all()) {
      Optional<Figure> figure = spec.build(results);
      if (figure.isEmpty()) {
        remarks.add("Figure “" + spec.title() + "” is left out: the study holds nothing to draw in it");
        continue;
      }
      for (FigureWriter writer : writers()) {
        try (OutputStream out = file("figures/" + spec.id() + "." + writer.ending())) {
          writer.write(figure.get(), spec.title(), Double.isNaN(options.widthMm()) ? figure.get().widthMm() : options.widthMm(), out);
        }
      }
      number++;
      captions.append("Figure ").append(number).append(" (").append(spec.id()).append("). ").append(spec.title()).append(". ")
          .append(figure.get().caption()).append("\n\n");
    }
    text("figures/captions.txt", captions.toString());
  }

  private List<FigureWriter> writers() {
    List<FigureWriter> writers = List.of(new PngWriter(options.dpi()), new SvgWriter(), new PdfWriter(options.when()));
    return writers.stream().filter(w -> options.formats().contains(w.ending())).toList();
  }

  private void text(String name, String text) throws IOException {
    try (OutputStream out = file(name)) {
      out.write(text.getBytes(StandardCharsets.UTF_8));
    }
  }

  private OutputStream file(String name) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    files.add(file);
    return new BufferedOutputStream(Files.newOutputStream(file));
  }
}
