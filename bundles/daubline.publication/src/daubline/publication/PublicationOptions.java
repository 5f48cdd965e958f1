package daubline.publication;

import daubline.analysis.ComparisonOptions;
import daubline.export.Provenance;
import daubline.export.Provenance.Setting;
import daubline.export.Style;
import daubline.export.TableOptions;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a publication is written with.
 *
 * @param version the version of the tool
 * @param settings settings and seeds of the comparison, printed on the notes sheet
 * @param when the time that file formats ask for
 * @param style how tables are printed
 * @param tables what was chosen about the content of tables
 * @param figures how figures are written
 * @param template a workbook of the user's own whose named ranges are filled; it is read, never written
 * @param deposit what the deposit says of itself; empty for no deposit
 */
public record PublicationOptions(String version, List<Setting> settings, Instant when, Style style, TableOptions tables, FigureOptions figures,
    Optional<Path> template, Optional<DepositOptions> deposit) {

  public PublicationOptions {
    settings = List.copyOf(settings);
  }

  /** What the results depend on besides the study, as it stands on the notes sheet. */
  public static List<Setting> settings(ComparisonOptions comparison) {
    return List.of(new Setting("draws", Integer.toString(comparison.draws())), new Setting("seed", Long.toString(comparison.seed())),
        new Setting("demonstrations", comparison.withDemonstrations() ? "compared" : "left out"), new Setting("compared with", comparison.against().word()),
        new Setting("tolerances", comparison.repeatsAsTolerance() ? "spread of repeats where it is known" : "those of the study"));
  }

  /** Journal tables, figures in all formats, no deposit. */
  public static PublicationOptions standard(String version, List<Setting> settings) {
    return new PublicationOptions(version, settings, Provenance.NO_TIME, Style.JOURNAL, TableOptions.STANDARD, FigureOptions.standard(), Optional.empty(),
        Optional.empty());
  }

  /** The same at another time. */
  public PublicationOptions at(Instant time) {
    return new PublicationOptions(version, settings, time, style, tables, figures, template, deposit);
  }

  /** The same with tables in another style. */
  public PublicationOptions in(Style other) {
    return new PublicationOptions(version, settings, when, other, tables, figures, template, deposit);
  }

  /** The same with other figure files. */
  public PublicationOptions with(FigureOptions other) {
    return new PublicationOptions(version, settings, when, style, tables, other, template, deposit);
  }

  /** The same with a deposit. */
  public PublicationOptions with(DepositOptions other) {
    return new PublicationOptions(version, settings, when, style, tables, figures, template, Optional.of(other));
  }

  /** The same with other choices about the content of tables. */
  public PublicationOptions with(TableOptions other) {
    return new PublicationOptions(version, settings, when, style, other, figures, template, deposit);
  }

  /** The same with a template to fill. */
  public PublicationOptions filling(Path other) {
    return new PublicationOptions(version, settings, when, style, tables, figures, Optional.of(other), deposit);
  }

  /** What is printed on the notes sheet: the settings, and what was chosen about tables where it is not the usual. */
  List<Setting> printed() {
    List<Setting> all = new ArrayList<>(settings);
    if (tables.iron() != TableOptions.Iron.AS_PRINTED) {
      all.add(new Setting("iron in chemistry", tables.iron().word()));
    }
    if (!tables.oxides().isEmpty()) {
      all.add(new Setting("first oxides", String.join(", ", tables.oxides())));
    }
    return all;
  }
}
