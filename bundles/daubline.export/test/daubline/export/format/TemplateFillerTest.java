package daubline.export.format;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Finding;
import daubline.export.Table;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Workbooks of somebody's own, filled by their named ranges. */
class TemplateFillerTest {

  @TempDir
  Path folder;
  private List<Finding> findings;

  private static void name(XSSFWorkbook book, String name, String range) {
    var named = book.createName();
    named.setNameName(name);
    named.setRefersToFormula(range);
  }

  private static XSSFRow row(XSSFSheet sheet, int row) {
    return sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row);
  }

  private Path template(Consumer<XSSFWorkbook> make) throws Exception {
    Path file = folder.resolve("mine.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook(); OutputStream out = Files.newOutputStream(file)) {
      book.createSheet("Page");
      make.accept(book);
      book.write(out);
    }
    return file;
  }

  private XSSFWorkbook filled(Path template, Table... tables) throws Exception {
    byte[] before = Files.readAllBytes(template);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    findings = new TemplateFiller(Samples.PROVENANCE, List.of(tables)).fill(template, out);
    assertArrayEquals(before, Files.readAllBytes(template), "the template is as it was");
    return new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()));
  }

  private static void put(XSSFWorkbook book, int row, int column, String text) {
    row(book.getSheetAt(0), row).createCell(column).setCellValue(text);
  }

  @Test
  void aTableAColumnAndALineAreFilledAndTheRestStays() throws Exception {
    Path file = template(book -> {
      put(book, 0, 0, "My own report");
      name(book, "kinds", "Page!$A$3");
      name(book, "KINDS.d", "Page!$F$3");
      row(book.getSheetAt(0), 0).createCell(7).setCellFormula("SUM(KINDS.d)");
      name(book, "study_digest", "Page!$C$1");
    });
    try (XSSFWorkbook book = filled(file, Samples.kinds())) {
      XSSFSheet sheet = book.getSheet("Page");
      assertEquals(List.of(), findings);
      assertEquals("My own report", sheet.getRow(0).getCell(0).getStringCellValue());
      assertEquals("SUM(KINDS.d)", sheet.getRow(0).getCell(7).getCellFormula());
      assertEquals("sha256:abc", sheet.getRow(0).getCell(2).getStringCellValue());
      assertEquals("Diameter (mm)", sheet.getRow(2).getCell(1).getStringCellValue());
      assertEquals(408.4, sheet.getRow(3).getCell(1).getNumericCellValue(), 1e-9);
      assertEquals(25.8, sheet.getRow(3).getCell(2).getNumericCellValue(), 1e-9);
      assertEquals(408.4, sheet.getRow(2).getCell(5).getNumericCellValue(), 1e-9);
      assertEquals("=1+1", sheet.getRow(5).getCell(3).getStringCellValue());
      assertTrue(sheet.getRow(5).getCell(3).getCellStyle().getQuotePrefixed());
      assertEquals("Page!$A$3:$D$9", book.getName("kinds").getRefersToFormula());
      assertEquals("Page!$F$3:$F$8", book.getName("KINDS.d").getRefersToFormula());
      assertTrue(book.getForceFormulaRecalculation());
    }
  }

  @Test
  void headingsOfTheTemplateChooseColumnsAndItsTableGrows() throws Exception {
    Path file = template(book -> {
      put(book, 0, 0, "note");
      put(book, 0, 1, "Diameter");
      put(book, 1, 0, "example");
      put(book, 2, 0, "another example");
      XSSFTable table = book.getSheetAt(0).createTable(new AreaReference("A1:B3", SpreadsheetVersion.EXCEL2007));
      table.setName("Mine");
      table.setDisplayName("Mine");
      name(book, "kinds", "Page!$A$1:$B$3");
    });
    try (XSSFWorkbook book = filled(file, Samples.kinds())) {
      assertEquals(List.of(), findings);
      XSSFSheet sheet = book.getSheetAt(0);
      assertEquals("Diameter", sheet.getRow(0).getCell(1).getStringCellValue());
      assertEquals("plain", sheet.getRow(1).getCell(0).getStringCellValue());
      assertEquals(-255, sheet.getRow(2).getCell(1).getNumericCellValue(), 1e-9);
      assertEquals("A1:B7", sheet.getTables().get(0).getArea().formatAsString());
    }
  }

  @Test
  void examplesBelowAShorterTableDoNotStayAsData() throws Exception {
    Path file = template(book -> {
      for (int r = 0; r < 6; r++) {
        put(book, r, 0, r == 0 ? "word" : "example");
      }
      name(book, "words", "Page!$A$1:$A$6");
    });
    try (XSSFWorkbook book = filled(file, Samples.words("one", "two"))) {
      assertEquals("two", book.getSheetAt(0).getRow(2).getCell(0).getStringCellValue());
      assertEquals(CellType.BLANK, book.getSheetAt(0).getRow(3).getCell(0).getCellType());
    }
  }

  @Test
  void whatStandsInTheWayIsSaidAndKept() throws Exception {
    Path file = template(book -> {
      put(book, 2, 0, "mine");
      name(book, "words", "Page!$A$1");
      row(book.getSheetAt(0), 1).createCell(3).setCellFormula("1+1");
      name(book, "words.word", "Page!$D$1:$D$4");
      book.getSheetAt(0).addMergedRegion(new CellRangeAddress(0, 3, 5, 6));
      name(book, "kinds.id", "Page!$F$1");
    });
    try (XSSFWorkbook book = filled(file, Samples.words("a", "b", "c"), Samples.kinds())) {
      assertEquals(4, findings.size(), findings.toString());
      assertTrue(findings.get(0).what().contains("cell A3"), findings.get(0).what());
      assertTrue(findings.get(1).what().contains("formula"), findings.get(1).what());
      assertTrue(findings.get(2).what().contains("merged"), findings.get(2).what());
      assertEquals("template.nothing", findings.get(3).code());
      assertEquals("mine", book.getSheetAt(0).getRow(2).getCell(0).getStringCellValue());
      assertEquals("1+1", book.getSheetAt(0).getRow(1).getCell(3).getCellFormula());
    }
  }

  @Test
  void namesThatSayNothingBecomeFindings() throws Exception {
    Path file = template(book -> {
      name(book, "yeilds", "Page!$A$1");
      name(book, "words.wrod", "Page!$B$1");
      name(book, "kinds", "12*3");
      name(book, "words", "Page!$C$1");
    });
    try (XSSFWorkbook book = filled(file, Samples.words("a"), Samples.kinds())) {
      assertEquals(List.of("range yeilds", "range words.wrod", "range kinds"), findings.stream().map(Finding::where).toList());
      assertTrue(findings.get(0).remedy().contains("words") && findings.get(1).what().contains("has no column “wrod”"), findings.toString());
      assertEquals("a", book.getSheetAt(0).getRow(1).getCell(2).getStringCellValue());
    }
  }

  @Test
  void whatIsNoWorkbookIsAnErrorAndNothingIsWritten() throws Exception {
    Path garbage = Files.write(folder.resolve("garbage.xlsx"), new byte[] {1, 2, 3, 4, 5, 6, 7, 8, 9});
    Path cut = folder.resolve("cut.xlsx");
    byte[] whole = Files.readAllBytes(template(book -> name(book, "words", "Page!$A$1")));
    Files.write(cut, java.util.Arrays.copyOf(whole, whole.length / 2));
    Path macros = Files.write(folder.resolve("macros.xlsm"), whole);
    for (Path file : List.of(garbage, cut, macros, folder.resolve("missing.xlsx"))) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      List<Finding> said = new TemplateFiller(Samples.PROVENANCE, List.of(Samples.words("a"))).fill(file, out);
      assertTrue(said.size() == 1 && said.get(0).isError(), file + ": " + said);
      assertEquals(0, out.size());
    }
  }

  @Test
  void twoCopiesAreAlikeToTheByte() throws Exception {
    Path file = template(book -> name(book, "words", "Page!$A$1"));
    ByteArrayOutputStream first = new ByteArrayOutputStream();
    new TemplateFiller(Samples.PROVENANCE, List.of(Samples.words("a"))).fill(file, first);
    Thread.sleep(2100); // zip archives keep two seconds
    ByteArrayOutputStream second = new ByteArrayOutputStream();
    new TemplateFiller(Samples.PROVENANCE, List.of(Samples.words("a"))).fill(file, second);
    assertArrayEquals(first.toByteArray(), second.toByteArray());
  }
}
