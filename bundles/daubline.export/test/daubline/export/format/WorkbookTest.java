package daubline.export.format;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.export.Table;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** The workbook, read back. */
class WorkbookTest {

  private static byte[] write(Table... tables) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new WorkbookWriter(Samples.PROVENANCE).write(List.of(tables), out);
    return out.toByteArray();
  }

  private static XSSFWorkbook read(byte[] bytes) throws IOException {
    return new XSSFWorkbook(new ByteArrayInputStream(bytes));
  }

  @Test
  void numbersAreNumbersAndTextIsNeverAFormula() throws IOException {
    try (XSSFWorkbook book = read(write(Samples.kinds()))) {
      XSSFSheet sheet = book.getSheet("Kinds of Cells");
      assertEquals(408.4, sheet.getRow(1).getCell(1).getNumericCellValue(), 1e-9);
      assertEquals("408", new DataFormatter(Locale.ROOT).formatCellValue(sheet.getRow(1).getCell(1)));
      assertEquals("-255 [1]", new DataFormatter(Locale.ROOT).formatCellValue(sheet.getRow(2).getCell(1)));
      assertEquals("< 0.05", sheet.getRow(3).getCell(1).getStringCellValue());
      assertEquals("00012", sheet.getRow(1).getCell(0).getStringCellValue());
      for (Row row : sheet) {
        row.forEach(cell -> assertFalse(cell.getCellType() == CellType.FORMULA));
      }
      assertEquals("=1+1", sheet.getRow(3).getCell(3).getStringCellValue());
      assertTrue(sheet.getRow(3).getCell(3).getCellStyle().getQuotePrefixed());
    }
  }

  @Test
  void itHasContentsNotesNamedTablesAndAFrozenHeader() throws IOException {
    try (XSSFWorkbook book = read(write(Samples.kinds(), Samples.words("a")))) {
      assertEquals(List.of("Contents", "Kinds of Cells", "Words", "Notes"),
          java.util.stream.IntStream.range(0, 4).mapToObj(book::getSheetName).toList());
      XSSFSheet sheet = book.getSheet("Kinds of Cells");
      assertEquals("table_kinds", sheet.getTables().get(0).getName());
      assertEquals("A1:D7", sheet.getTables().get(0).getArea().formatAsString());
      assertEquals(sheet.getRow(0).getCell(2).getStringCellValue(), sheet.getTables().get(0).getColumns().get(2).getName());
      assertEquals(1, sheet.getPaneInformation().getHorizontalSplitPosition());
      assertEquals(0, sheet.getNumMergedRegions());
      assertEquals("sha256:abc", book.getSheet("Notes").getRow(2).getCell(2).getStringCellValue());
      assertEquals("'Kinds of Cells'!A1", book.getSheetAt(0).getRow(1).getCell(0).getHyperlink().getLocation());
    }
  }

  @Test
  void textThatCannotBeStoredIsMendedAndItIsSaid() throws IOException {
    String tooLong = "x".repeat(40_000);
    Table words = Samples.words("a\u0000b\u001F", tooLong, "_x0041_", "ok 😀 \uD800 end");
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    List<String> said = new WorkbookWriter(Samples.PROVENANCE).write(List.of(words), out);
    assertEquals(3, said.size());
    assertEquals("Words, row 3, Word: text of 40000 characters cut to 32767", said.get(1));
    try (XSSFWorkbook book = read(out.toByteArray())) {
      XSSFSheet sheet = book.getSheet("Words");
      assertEquals("a\uFFFDb\uFFFD", sheet.getRow(1).getCell(0).getStringCellValue());
      assertEquals(32_767, sheet.getRow(2).getCell(0).getStringCellValue().length());
      assertEquals("_x0041_", sheet.getRow(3).getCell(0).getStringCellValue());
      assertEquals("ok 😀 \uFFFD end", sheet.getRow(4).getCell(0).getStringCellValue());
      boolean noted = false;
      for (Row row : book.getSheet("Notes")) {
        noted |= row.getCell(2).getStringCellValue().equals(said.get(1));
      }
      assertTrue(noted);
    }
  }

  @Test
  void theSameTablesGiveTheSameBytesAnywhere() throws Exception {
    byte[] first = write(Samples.kinds(), Samples.words("a"), Samples.yields());
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
      Thread.sleep(2100); // zip archives keep two seconds
      assertArrayEquals(first, write(Samples.kinds(), Samples.words("a"), Samples.yields()));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void aChartStandsBesideItsTableAndFollowsItsCells() throws Exception {
    try (XSSFWorkbook book = read(write(Samples.yields()))) {
      var chart = book.getSheet("Yields").getDrawingPatriarch().getCharts().get(0).getCTChart();
      var series = chart.getPlotArea().getBarChartArray(0).getSerArray(0);
      assertEquals("Yields!$B$2:$B$3", series.getVal().getNumRef().getF());
      assertEquals("Yields!$A$2:$A$3", series.getCat().getStrRef().getF());
      assertEquals("25.5", series.getVal().getNumRef().getNumCache().getPtArray(1).getV());
    }
  }

  @Test
  void sheetNamesKeepTheRules() {
    SheetNames names = new SheetNames();
    assertEquals("a b", names.free("a/b"));
    assertEquals("A B 2", names.free("A:B"));
    assertEquals("History 2", names.free("History"));
    assertEquals("quoted", names.free("'quoted'"));
    assertEquals(31, names.free("x".repeat(50)).length());
    assertEquals(31, names.free("x".repeat(50)).length());
  }
}
