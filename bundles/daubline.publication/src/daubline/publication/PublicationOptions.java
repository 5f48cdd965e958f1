package daubline.publication;

import daubline.analysis.ComparisonOptions;
import daubline.export.Provenance;
import daubline.export.Provenance.Setting;
import daubline.export.Style;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What a publication is written with.
 *
 * @param version the version of the tool
 * @param settings settings and seeds of the comparison, printed on the notes sheet
 * @param when the time that file formats ask for
 * @param style how tables are printed
 * @param figures how figures are written
 * @param deposit what the deposit says of itself; empty for no deposit
 */
public record PublicationOptions(String version, List<Setting> settings, Instant when, Style style, FigureOptions figures, Optional<DepositOptions> deposit) {

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
    return new PublicationOptions(version, settings, Provenance.NO_TIME, Style.JOURNAL, FigureOptions.standard(), Optional.empty());
  }

  /** The same at another time. */
  public PublicationOptions at(Instant time) {
    return new PublicationOptions(version, settings, time, style, figures, deposit);
  }

  /** The same with tables in another style. */
  public PublicationOptions in(Style other) {
    return new PublicationOptions(version, settings, when, other, figures, deposit);
  }

  /** The same with other figure files. */
  public PublicationOptions with(FigureOptions other) {
    return new PublicationOptions(version, settings, when, style, other, deposit);
  }

  /** The same with a deposit. */
  public PublicationOptions with(DepositOptions other) {
    return new PublicationOptions(version, settings, when, style, figures, Optional.of(other));
  }
}
