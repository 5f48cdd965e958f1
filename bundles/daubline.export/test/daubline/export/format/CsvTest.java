package daubline.export.format;

import static org.junit.jupiter.api.Assertions.assertEquals;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Comma-separated files, against RFC 4180 section 2 and an independent reader. */
class CsvTest {

  @Test
  void theArchiveFormIsReadBackUnchangedByAnotherReader() {
    String text = new ArchiveCsv().text(Samples.kinds());
    List<List<String>> rows;
    try (CsvReader<CsvRecord> reader = CsvReader.builder().ofCsvRecord(text)) {
      rows = reader.stream().map(CsvRecord::getFields).toList();
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
    assertEquals(List.of("id", "d", "d_u", "note"), rows.get(0));
    assertEquals(List.of("00012", "408.4", "25.8", "plain"), rows.get(1));
    assertEquals(List.of("1E5", "-255", "", "says \"twice\", in\nfull"), rows.get(2));
    assertEquals(List.of("03-04", "< 0.05", "", "=1+1"), rows.get(3));
    assertEquals(List.of("-x", "380–434", "", ""), rows.get(4));
    assertEquals("\rw", rows.get(6).get(3));
    assertEquals(7, rows.size());
  }

  @Test
  void linesEndAsTheStandardSays() {
    assertEquals("word\r\na\r\n\"\"\r\n\"b\"\"c\"\r\n", new ArchiveCsv().text(Samples.words("a", "", "b\"c")));
  }

  @Test
  void onlyTextIsGuardedAndTheGuardIsReported() {
    SpreadsheetCsv writer = new SpreadsheetCsv(false);
    String text = writer.text(Samples.kinds());
    assertEquals("\uFEFFId,Diameter (mm),\"Diameter, standard uncertainty (mm)\",Note", text.lines().findFirst().orElseThrow());
    assertEquals(true, text.contains("\n1E5,-255,,"), "a negative number stays a number");
    assertEquals(true, text.contains(",'=1+1\r\n"));
    assertEquals(List.of("3 note", "4 id", "5 id", "5 note", "6 id", "6 note"),
        writer.guarded().stream().map(g -> g.row() + " " + g.column()).toList());
  }

  @Test
  void aDecimalCommaBringsSemicolons() {
    String text = new SpreadsheetCsv(true).text(Samples.kinds());
    assertEquals(true, text.contains("00012;408,4;25,8;plain"), text);
  }

  @Test
  void numbersForMachinesDropOnlyTheNoiseOfConversion() {
    assertEquals("0.3", Plain.number(0.1 + 0.2));
    assertEquals("-12", Plain.number(-12));
    assertEquals("0", Plain.number(-0.0));
    assertEquals("1.0E-9", Plain.number(1e-9).replace("1E-9", "1.0E-9"));
    assertEquals("0.0123456789012345", Plain.number(0.0123456789012345));
  }

  @Test
  void everyNumberIsThatOfFifteenDigits() {
    java.util.Random random = new java.util.Random(7);
    for (int i = 0; i < 100_000; i++) {
      double value = i % 3 == 0 ? random.nextInt(2_000_000) / 1000.0 - 1000 : i % 3 == 1 ? random.nextGaussian() * Math.pow(10, random.nextInt(40) - 20)
          : random.nextInt(1_000_000) * 0.1;
      java.math.BigDecimal rounded = new java.math.BigDecimal(Double.toString(value)).round(new java.math.MathContext(15, java.math.RoundingMode.HALF_EVEN));
      String text = Plain.number(value);
      assertEquals(0, rounded.compareTo(new java.math.BigDecimal(text)), value + " is written " + text);
      assertEquals(false, text.endsWith(".0"), text);
    }
  }
}
