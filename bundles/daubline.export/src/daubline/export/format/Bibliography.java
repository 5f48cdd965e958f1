package daubline.export.format;

import daubline.analysis.record.CitationData;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Writes citations into a bibliographic file that programs for references read. */
public final class Bibliography {

  private Bibliography() {
  }

  /**
   * Writes a file; one that is there is replaced.
   *
   * @param file its name ends in .bib for BibTeX or .ris for RIS
   * @throws IllegalArgumentException when it ends otherwise
   * @throws IOException when it cannot be written
   */
  public static void write(List<CitationData> citations, Path file) throws IOException {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    if (!name.endsWith(".bib") && !name.endsWith(".ris")) {
      throw new IllegalArgumentException("“" + name + "” names no bibliographic format; let the name end in .bib for BibTeX or .ris for RIS");
    }
    Files.writeString(file, name.endsWith(".bib") ? BibTex.of(citations) : Ris.of(citations), StandardCharsets.UTF_8);
  }
}
