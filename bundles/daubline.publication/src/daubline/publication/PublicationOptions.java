package daubline.publication;

import daubline.analysis.ComparisonOptions;
import daubline.base.CatalogueWords;
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
 * @param language the language of tables, figures, report and handout, as a two-letter code; archive and deposit are English always
 * @param deposit what the deposit says of itself; empty for no deposit
 */
public record PublicationOptions(String version, List<Setting> settings, Instant when, Style style, TableOptions tables, FigureOptions figures,
    Optional<Path> template, String language, Optional<DepositOptions> deposit) {

  /** The language that everything is made in. */
  public static final String ENGLISH = "en";

  /** The languages of publication. */
  public static final List<String> LANGUAGES = List.of(ENGLISH, CatalogueWords.GERMAN);

  /** @throws IllegalArgumentException when nothing is written in the language */
  public PublicationOptions {
    if (!LANGUAGES.contains(language)) {
      throw new IllegalArgumentException("Publications are written in " + String.join(", ", LANGUAGES) + ", not in “" + language + "”");
    }
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
        ENGLISH, Optional.empty());
  }

  /** The same at another time. */
  public PublicationOptions at(Instant time) {
    return new PublicationOptions(version, settings, time, style, tables, figures, template, language, deposit);
  }

  /** The same with tables in another style. */
  public PublicationOptions in(Style other) {
    return new PublicationOptions(version, settings, when, other, tables, figures, template, language, deposit);
  }

  /** The same with other figure files. */
  public PublicationOptions with(FigureOptions other) {
    return new PublicationOptions(version, settings, when, style, tables, other, template, language, deposit);
  }

  /** The same in another language, one of {@link #LANGUAGES}. */
  public PublicationOptions told(String other) {
    return new PublicationOptions(version, settings, when, style, tables, figures, template, other, deposit);
  }

  /** The same with a deposit. */
  public PublicationOptions with(DepositOptions other) {
    return new PublicationOptions(version, settings, when, style, tables, figures, template, language, Optional.of(other));
  }

  /** The same with other choices about the content of tables. */
  public PublicationOptions with(TableOptions other) {
    return new PublicationOptions(version, settings, when, style, other, figures, template, language, deposit);
  }

  /** The same with a template to fill. */
  public PublicationOptions filling(Path other) {
    return new PublicationOptions(version, settings, when, style, tables, figures, Optional.of(other), language, deposit);
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
