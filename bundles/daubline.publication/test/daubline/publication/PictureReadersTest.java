package daubline.publication;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Figures and documents in the hands of other programs. */
class PictureReadersTest {

  @TempDir
  static Path folder;

  @BeforeAll
  static void write() throws Exception {
    Publication.write(PublicationTest.results("aldervale", 2), Optional.empty(), folder.resolve("out"),
        PublicationOptions.standard("0.0", List.of()).with(new FigureOptions(Set.of("svg", "pdf"), 300, Double.NaN)), Progress.NONE);
  }

  private static List<Path> files(String ending) throws Exception {
    try (Stream<Path> files = Files.list(folder.resolve("out/figures"))) {
      List<Path> found = files.filter(f -> f.toString().endsWith(ending)).sorted().toList();
      assertTrue(found.size() > 10, ending + ": " + found.size());
      return found;
    }
  }

  @Test
  void everyTypefaceOfAPdfIsEmbedded() throws Exception {
    Programs.need("pdffonts", "pdffonts", "-v");
    for (Path file : files(".pdf")) {
      List<String> fonts = Programs.run(folder, "pdffonts", file.toString()).lines().skip(2).toList();
      assertFalse(fonts.isEmpty(), file + " has no text");
      // columns from the right: object, number, uni, sub, emb
      fonts.forEach(font -> assertEquals("yes", font.strip().split("\\s+")[font.strip().split("\\s+").length - 5], file + ": " + font));
    }
  }

  @Test
  void everySvgIsWellFormedAndFetchesNothing() throws Exception {
    Programs.need("xmllint", "xmllint", "--version");
    for (Path file : files(".svg")) {
      Programs.run(folder, "xmllint", "--noout", "--nonet", file.toString());
      String text = Files.readString(file);
      assertFalse(text.contains("<!DOCTYPE") || text.contains("<script") || text.matches("(?s).*href=\"(https?|file):.*"), file.toString());
      assertTrue(text.contains("<title") && text.contains("<desc"), file + " can be read aloud");
    }
  }

  @Test
  void libreOfficeReadsTheReport() throws Exception {
    Programs.needLibreOffice();
    Programs.need("pdftotext", "pdftotext", "-v");
    Path pdf = Programs.convert(folder.resolve("out/report.docx"), "pdf", folder);
    String text = Programs.run(folder, "pdftotext", pdf.toString(), "-");
    int at = 0;
    for (String heading : List.of("Aims", "Earlier Work", "Materials", "Methods", "Differences between Trials", "Results", "Limits", "Appendix")) {
      int next = text.indexOf(heading, at);
      assertTrue(next >= at, heading + " is missing or stands elsewhere");
      at = next;
    }
  }
}
