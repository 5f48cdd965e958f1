package daubline.publication;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.export.Cell;
import daubline.export.Column;
import daubline.export.Provenance;
import daubline.export.Table;
import daubline.export.Tables;
import daubline.export.format.WorkbookWriter;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The workbook of the demonstration study, with a table of hostile texts beside, in the hands of other programs. */
class WorkbookReadersTest {

  /**
   * Texts that spreadsheets have been known to take for a formula, a command, a date or a number (OWASP, CSV injection; the
   * six signs at the start), and texts that readers stumble over.
   */
  private static final List<String> CORPUS = List.of("=1+1", "=cmd|' /C calc'!A0", "=HYPERLINK(\"http://example.org\",\"x\")", "+1+1", "-1+1", "-2", "@SUM(1+1)",
      "\t=1+1", "\r=1+1", "=", "'quoted", "\"=1+1\"", ";=1+1", "00012", "1E5", "03-04", "1/2", "2031-05-10", "TRUE", "#N/A", "1,5", "1.5", "0x1F", "١٢", "עברית ‏=1",
      "a\nb", " leads", "trails ", "_x000D_", "<b>&amp;</b>", "😀", "e\u0301", "x".repeat(32_767), "{=SUM(A1)}", "%0A=1", "=1+1\u0000", "𝒜=1");

  @TempDir
  static Path folder;
  private static Path workbook;
  private static List<String> written;

  @BeforeAll
  static void write() throws Exception {
    var results = PublicationTest.results("aldervale", 2);
    List<Table> tables = new ArrayList<>(Tables.all().stream().map(t -> t.build(results)).toList());
    tables.add(new Table("hostile", "Hostile Texts", "", List.of(Column.text("text", "Text"), Column.number("number", "Number", "kg")), IntStream
        .range(0, CORPUS.size()).mapToObj(i -> List.of(Cell.text(CORPUS.get(i)), Cell.number(-i / 7.0))).toList(), List.of()));
    workbook = folder.resolve("tables.xlsx");
    try (OutputStream out = Files.newOutputStream(workbook)) {
      new WorkbookWriter(new Provenance("Aldervale", "sha256:0", "0.0", List.of(), Provenance.NO_TIME)).write(tables, out);
    }
    written = Cells.of(workbook);
    assertTrue(written.size() > 5000, "only " + written.size() + " cells");
  }

  @Test
  void libreOfficeReadsRecalculatesAndSavesItAgainWithoutLoss() throws Exception {
    Programs.needLibreOffice();
    List<String> again = Cells.of(Programs.convert(workbook, "xlsx", folder));
    assertEquals(List.of(), Programs.differences(written, again));
  }

  @Test
  void pythonReadsTheSameValuesAndTypes() throws Exception {
    Programs.needPython("openpyxl");
    String read = Programs.run(folder, Programs.PYTHON, Programs.SCRIPTS.resolve("read.py").toString(), "workbook", workbook.toString());
    // this reader leaves the standard's escape for a literal "_x000D_" as it stands in the file (ECMA-376 part 1, 22.9.2.19)
    assertEquals(List.of(), Programs.differences(written, Cells.printed(read).stream().map(l -> l.replace("text _x005F_x", "text _x")).toList()));
  }

  @Test
  void rReadsTheSameValuesAndTypes() throws Exception {
    Programs.needR("readxl");
    String read = Programs.run(folder, "Rscript", Programs.SCRIPTS.resolve("read.R").toString(), "workbook", workbook.toString());
    assertEquals(List.of(), Programs.differences(written, Cells.printed(read)));
  }
}
