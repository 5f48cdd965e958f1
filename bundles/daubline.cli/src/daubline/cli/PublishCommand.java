package daubline.cli;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyComparison;
import daubline.analysis.StudyResults;
import daubline.analysis.deposit.DepositData;
import daubline.analysis.deposit.Disclosure;
import daubline.base.Version;
import daubline.export.Provenance;
import daubline.export.Style;
import daubline.publication.DepositOptions;
import daubline.publication.FigureOptions;
import daubline.publication.Progress;
import daubline.publication.Publication;
import daubline.publication.PublicationOptions;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The main job: check a study, compare, rank, and write everything that leaves it. */
@Command(name = "publish", mixinStandardHelpOptions = true, description = {
    "Check a study, compare every trial with every evidence sheet, write workbook, tables, figures, report and a checked deposit, and print the ranking.",
    "SOURCE_DATE_EPOCH sets the time written into files; without it they hold none."})
final class PublishCommand implements Callable<Integer> {

  private static final int RANKED = 20;

  @Mixin
  private StudyArgument study;

  @Mixin
  private ComparisonArguments arguments;

  @Mixin
  private TableArguments tables;

  @Option(names = "--to", paramLabel = "FOLDER", defaultValue = "out", description = "where to write (default: ${DEFAULT-VALUE})")
  private Path folder;

  @Option(names = "--style", paramLabel = "STYLE", defaultValue = "JOURNAL", description = "how tables are printed: ${COMPLETION-CANDIDATES}")
  private Style.Preset preset;

  @Option(names = "--decimal-comma", description = "print a comma as decimal sign")
  private boolean decimalComma;

  @Option(names = "--language", paramLabel = "CODE", defaultValue = "en",
      description = "language of tables, figures, report and handout: en or de; archive and deposit stay English (default: ${DEFAULT-VALUE})")
  private String language;

  @Option(names = "--formats", split = ",", paramLabel = "ENDING", defaultValue = "png,svg,pdf", description = "figure files (default: ${DEFAULT-VALUE})")
  private Set<String> formats;

  @Option(names = "--dpi", defaultValue = "300", description = "dots per inch of bitmaps (default: ${DEFAULT-VALUE})")
  private int dpi;

  @Option(names = "--width", paramLabel = "MM", defaultValue = "NaN", description = "width of all figures in millimetres; without it each has its own")
  private double widthMm;

  @Option(names = "--template", paramLabel = "FILE.xlsx", description = "fill a copy of a workbook of your own: a named range that is called as a table "
      + "(time_line), as a table and a column (residues.mass) or as a line of the notes (study_digest) is filled")
  private Path template;

  @Option(names = "--without-deposit", description = "write no deposit")
  private boolean withoutDeposit;

  @Option(names = "--creator", paramLabel = "NAME", description = "who is cited, as “Family, Given”; may be repeated; without it the people who consented")
  private List<String> creators = new ArrayList<>();

  @Option(names = "--publisher", paramLabel = "NAME", defaultValue = "", description = "who publishes the deposit")
  private String publisher;

  @Option(names = "--year", description = "year of publication; without it that of SOURCE_DATE_EPOCH or today's")
  private Integer year;

  @Option(names = "--licence", paramLabel = "SPDX", defaultValue = "", description = "such as CC-BY-4.0; without it the one that the study states")
  private String licence;

  @Option(names = "--doi", defaultValue = "", description = "identifier that the archive gave beforehand")
  private String doi;

  @Option(names = "--coarsen", paramLabel = "DEGREES", defaultValue = "0.1",
      description = "grid for the places of sensitive sites; 0 leaves them out (default: ${DEFAULT-VALUE})")
  private double degrees;

  @Option(names = "--coarsen-all", description = "treat all sites as sensitive")
  private boolean allSites;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = study.read()) {
      ComparisonOptions comparison = arguments.options();
      PublicationOptions options = options(comparison);
      StudyResults results = StudyComparison.of(session, comparison);
      Out.line("%s", results.snapshot().name());
      int wrong = Out.findings(results.checks());
      Optional<DepositData> data = withoutDeposit ? Optional.empty() : Optional.of(DepositData.of(session, new Disclosure(degrees, allSites)));
      Publication.Written written = Publication.write(results, data, folder, options, Progress.NONE);
      Out.line("");
      new ComparisonText(results, comparison, false, false, RANKED).print();
      return Math.max(wrong, PublicationText.print(written, folder));
    }
  }

  private PublicationOptions options(ComparisonOptions comparison) {
    Instant when = Provenance.when(System.getenv("SOURCE_DATE_EPOCH"));
    PublicationOptions options = PublicationOptions.standard(Version.NUMBER, PublicationOptions.settings(comparison)).at(when).in(new Style(preset, decimalComma))
        .with(new FigureOptions(formats, dpi, widthMm)).with(tables.options())
        .told(language);
    options = template == null ? options : options.filling(template);
    return withoutDeposit ? options : options.with(deposit(when));
  }

  private DepositOptions deposit(Instant when) {
    Instant published = when.equals(Provenance.NO_TIME) ? Instant.now() : when;
    return new DepositOptions(creators, publisher, year == null ? published.atOffset(ZoneOffset.UTC).getYear() : year, licence, doi);
  }
}
