package daubline.publication;

import daubline.export.Provenance;
import daubline.export.Provenance.Setting;
import daubline.export.Style;
import java.time.Instant;
import java.util.List;
import java.util.Set;

/**
 * What a publication is written with.
 *
 * @param version the version of the tool
 * @param settings settings and seeds of the comparison, printed on the notes sheet
 * @param when the time that file formats ask for
 * @param style how tables are printed
 * @param formats endings of the figure files: png, svg, pdf
 * @param dpi dots per inch of bitmaps
 * @param widthMm width of all figures in millimetres; NaN for the width that suits each
 */
public record PublicationOptions(String version, List<Setting> settings, Instant when, Style style, Set<String> formats, int dpi, double widthMm) {

  private static final int PRINT_DPI = 300;

  public PublicationOptions {
    settings = List.copyOf(settings);
    formats = Set.copyOf(formats);
    if (widthMm < 30 || widthMm > 1000) {
      throw new IllegalArgumentException("A figure is 30 to 1000 mm wide, not " + widthMm);
    }
  }

  /** Journal tables, bitmaps at 300 dots per inch and both vector formats, each figure at its own width. */
  public static PublicationOptions standard(String version, List<Setting> settings) {
    return new PublicationOptions(version, settings, Provenance.NO_TIME, Style.JOURNAL, Set.of("png", "svg", "pdf"), PRINT_DPI, Double.NaN);
  }

  /** The same at another time. */
  public PublicationOptions at(Instant time) {
    return new PublicationOptions(version, settings, time, style, formats, dpi, widthMm);
  }

  /** The same with tables in another style. */
  public PublicationOptions in(Style other) {
    return new PublicationOptions(version, settings, when, other, formats, dpi, widthMm);
  }

  /** The same with other figure files. */
  public PublicationOptions figures(Set<String> endings, int dotsPerInch, double mm) {
    return new PublicationOptions(version, settings, when, style, endings, dotsPerInch, mm);
  }
}
