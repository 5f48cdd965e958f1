package daubline.publication;

import daubline.analysis.StudyResults;
import daubline.analysis.deposit.DepositData;
import daubline.base.Finding;
import daubline.base.Wording;
import daubline.charts.Figure;
import daubline.charts.FigureSpec;
import daubline.charts.FigureWriter;
import daubline.charts.Figures;
import daubline.charts.NamedFigure;
import daubline.charts.PdfWriter;
import daubline.charts.PngWriter;
import daubline.charts.SvgWriter;
import daubline.charts.WordedFigure;
import daubline.export.DataTable;
import daubline.export.Discretion;
import daubline.export.Provenance;
import daubline.export.Style;
import daubline.export.Table;
import daubline.export.TableSpec;
import daubline.export.Tables;
import daubline.export.format.ArchiveCsv;
import daubline.export.format.BibTex;
import daubline.export.format.Latex;
import daubline.export.format.Markdown;
import daubline.export.format.SpreadsheetCsv;
import daubline.export.format.TableWriter;
import daubline.export.format.TemplateFiller;
import daubline.export.format.WordWriter;
import daubline.export.format.WorkbookWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;

/**
 * Writes everything that leaves a study into one folder: workbook, tables in each form, figures, report, and the deposit
 * where one is asked for. The same study and options give the same bytes.
 */
public final class Publication {

  private static final String DEPOSIT = "deposit";
  private static final Set<String> ONCE = Set.of("workbook", "references", "document", "report", "handout", DEPOSIT);

  private final StudyResults results;
  private final PublicationOptions options;
  private final Progress progress;
  private final Output output;
  private final Discretion discretion;
  private final Wording wording;
  private final Style style;
  /** As they are made, for the archive. */
  private final List<Table> english = new ArrayList<>();
  private final List<Table> tables = new ArrayList<>();
  private final List<NamedFigure> figures = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private int done;

  private Publication(StudyResults results, Output output, PublicationOptions options, Progress progress) {
    this.results = results;
    this.output = output;
    this.options = options;
    this.progress = progress;
    this.wording = Wording.of(options.language()).keeping(results.snapshot().names());
    this.style = options.style().in(wording);
    this.discretion = new Discretion(results.snapshot().record().people());
  }

  /**
   * What was written.
   *
   * @param files the names of the files below the folder, with / between folders, in the order in which they were written
   * @param tables titles of the tables
   * @param figures titles of the figures
   * @param remarks what could not be written as it was, which figures the study has no data for, and what the public does not see
   * @param findings what is wrong with what was written; without errors the deposit was validated and read again without loss
   */
  public record Written(List<String> files, List<String> tables, List<String> figures, List<String> remarks, List<Finding> findings) {

    public Written {
      files = List.copyOf(files);
      tables = List.copyOf(tables);
      figures = List.copyOf(figures);
      remarks = List.copyOf(remarks);
      findings = List.copyOf(findings);
    }
  }

  /**
   * Writes everything.
   *
   * @param results what was worked out
   * @param data what of the study may be deposited; needed when the options ask for a deposit
   * @param folder where to; made when it does not exist; files of an earlier run are replaced, changed ones are kept beside
   * @param options how
   * @param progress told what is written, and asked whether to go on
   * @throws IOException when a file cannot be written; the folder is then as it was
   * @throws CancellationException when progress says stop; the folder is then as it was
   */
  public static Written write(StudyResults results, Optional<DepositData> data, Path folder, PublicationOptions options, Progress progress)
      throws IOException {
    try (Staging staging = new Staging(folder)) {
      Publication publication = new Publication(results, staging.output(), options, progress);
      publication.build();
      publication.workbook();
      publication.tables();
      publication.references();
      publication.document();
      publication.figures();
      publication.report();
      publication.handout();
      if (options.deposit().isPresent()) {
        publication.deposit(data.orElseThrow(() -> new IllegalArgumentException("A deposit needs the study's data")), options.deposit().get());
      }
      publication.findings.addAll(staging.finish());
      staging.strangers(DEPOSIT).forEach(stranger -> publication.findings.add(Finding.warning("publish.stranger", stranger,
          "it stands among the files of the deposit, but is not described there", "move it away before you hand the deposit over")));
      return publication.written();
    }
  }

  private Written written() {
    return new Written(List.copyOf(output.names()), tables.stream().map(Table::title).toList(), figures.stream().map(NamedFigure::title).toList(), remarks, findings);
  }

  private void step(String what) {
    int all = 2 * (Tables.all().size() + Figures.all().size()) + ONCE.size();
    if (!progress.next(what, done++, all)) {
      throw new CancellationException("Stopped before: " + what);
    }
  }

  private void build() {
    for (TableSpec spec : Tables.all()) {
      step("table " + spec.title());
      Table table = spec.build(results, options.tables());
      english.add(discretion.table(table));
      tables.add(discretion.table(table.in(wording)));
    }
    for (FigureSpec spec : Figures.all()) {
      step("figure " + spec.title());
      List<NamedFigure> drawn = spec.all(results);
      drawn.stream().filter(this::isDiscreet).map(d -> WordedFigure.of(d, wording)).map(d -> d.reading(discretion::text)).forEach(figures::add);
      if (drawn.isEmpty()) {
        remarks.add("Figure “" + spec.title() + "” is left out: the study holds nothing to draw in it");
      }
    }
  }

  /** Lettering inside a figure cannot be replaced once it is laid out: a figure that names somebody who did not consent is left out. */
  private boolean isDiscreet(NamedFigure drawn) {
    boolean discreet = !discretion.isNeeded() || !discretion.names(drawn.id().replace('-', ' ') + " · " + SvgWriter.lettering(drawn.figure()));
    if (!discreet) {
      remarks.add(discretion.text("Figure “" + drawn.title() + "” is left out: it shows the name of a person who did not consent to be named; "
          + "take the name out of the name of the trial, furnace, lot or sheet"));
    }
    return discreet;
  }

  private void workbook() throws IOException {
    step("workbook");
    try (OutputStream out = output.file("tables.xlsx")) {
      remarks.addAll(new WorkbookWriter(provenance(), wording).write(tables, out));
    }
    if (options.template().isPresent()) {
      template(options.template().get());
    }
  }

  /** The template is filled into memory first: one that cannot be read leaves no file behind. */
  private void template(Path template) throws IOException {
    ByteArrayOutputStream filled = new ByteArrayOutputStream();
    findings.addAll(new TemplateFiller(provenance(), tables).fill(template, filled));
    if (filled.size() > 0) {
      try (OutputStream out = output.file("filled/" + template.getFileName())) {
        filled.writeTo(out);
      }
    }
  }

  private Provenance provenance() {
    return new Provenance(discretion.text(results.snapshot().name()), results.snapshot().digest(), options.version(),
        options.printed().stream().map(s -> new Provenance.Setting(s.name(), discretion.text(s.value()))).toList(), options.when());
  }

  private void tables() throws IOException {
    SpreadsheetCsv spreadsheet = new SpreadsheetCsv(options.style().decimalComma());
    for (Table table : english) {
      write("archive/" + table.id() + ".csv", new ArchiveCsv(), table);
    }
    for (Table table : tables) {
      step("table " + table.title());
      write("spreadsheet/" + table.id() + ".csv", spreadsheet, DataTable.of(table).in(wording));
      write("markdown/" + table.id() + ".md", new Markdown(style), table);
      write("latex/" + table.id() + ".tex", new Latex(style), table);
    }
    if (!spreadsheet.guarded().isEmpty()) {
      StringBuilder list = new StringBuilder("Text that a spreadsheet might take for a formula has an apostrophe before it in these cells:\n");
      spreadsheet.guarded().forEach(g -> list.append(g.table()).append(".csv, row ").append(g.row()).append(", column ").append(g.column()).append('\n'));
      output.text("spreadsheet/guarded.txt", list.toString());
    }
  }

  private void write(String name, TableWriter writer, Table table) throws IOException {
    try (Writer out = new OutputStreamWriter(output.file(name), StandardCharsets.UTF_8)) {
      writer.write(table, out);
    }
  }

  private void references() throws IOException {
    step("references");
    if (!results.snapshot().record().citations().isEmpty()) {
      output.text("references.bib", BibTex.of(discretion.citations(results.snapshot().record().citations())));
    }
  }

  private void document() throws IOException {
    step("tables as a document");
    try (OutputStream out = output.file("tables.docx"); WordWriter document = new WordWriter(provenance(), style)) {
      document.heading(provenance().study(), 1);
      for (int i = 0; i < tables.size(); i++) {
        document.table(tables.get(i), i + 1);
      }
      document.write(out);
    }
  }

  private void figures() throws IOException {
    StringBuilder captions = new StringBuilder();
    for (int i = 0; i < figures.size(); i++) {
      NamedFigure drawn = figures.get(i);
      step("figure " + drawn.title());
      for (FigureWriter writer : writers()) {
        try (OutputStream out = output.file("figures/" + drawn.id() + "." + writer.ending())) {
          writer.write(drawn.figure(), drawn.title(), widthMm(drawn.figure()), out);
        }
      }
      captions.append(wording.apply("Figure " + (i + 1))).append(" (").append(drawn.id()).append("). ").append(drawn.title()).append(". ")
          .append(drawn.figure().caption()).append("\n\n");
    }
    output.text("figures/captions.txt", captions.toString());
  }

  private double widthMm(Figure figure) {
    return Double.isNaN(options.figures().widthMm()) ? figure.widthMm() : options.figures().widthMm();
  }

  private List<FigureWriter> writers() {
    List<FigureWriter> writers = List.of(new PngWriter(options.figures().dpi()), new SvgWriter(), new PdfWriter(options.when()));
    return writers.stream().filter(w -> options.figures().formats().contains(w.ending())).toList();
  }

  private void report() throws IOException {
    step("report");
    Report report = new Report(results, discretion, tables, figures, provenance(), style);
    write("archive/where-from.csv", new ArchiveCsv(), report.trails(english));
    output.text("report.html", report.html());
    try (OutputStream out = output.file("report.docx")) {
      report.word(out);
    }
  }

  private void handout() throws IOException {
    step("handout");
    Handout handout = new Handout(results, discretion, figures, provenance(), wording);
    output.text("handout.html", handout.html());
    try (OutputStream out = output.file("handout.docx")) {
      handout.word(out);
    }
  }

  private void deposit(DepositData data, DepositOptions about) throws IOException {
    step(DEPOSIT);
    Output part = output.part(DEPOSIT);
    findings.addAll(new Deposit(data, new DepositMetadata(results.snapshot(), discretion, about, provenance()), part).write(results.checks()));
    output.add(DEPOSIT, part);
    data.withheld().forEach(withheld -> remarks.add("Not in the deposit: " + withheld));
  }
}
