package daubline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.session.StudySession;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever a stick holds, the commands answer with a finding that says what, where and how to mend it, and change nothing. */
class HostileFilesTest {

  private static final String HEAD = "series,name,fired:ore_total [kg]";

  @TempDir
  Path folder;

  private Path study;
  private String printed;

  @BeforeEach
  void aStudy() throws Exception {
    study = folder.resolve("study");
    StudySession.create(study, "Test").close();
  }

  private int run(Object... arguments) {
    Run run = Run.of(Arrays.stream(arguments).map(Object::toString).toArray(String[]::new));
    printed = run.out() + run.err();
    return run.exit();
  }

  private Path csv(String... lines) throws Exception {
    return Files.writeString(folder.resolve("in.csv"), String.join("\n", lines) + "\n");
  }

  /** Imports with --apply; the study must stay as it was. */
  private void refused(Path file, String said) throws Exception {
    String before = Files.readString(study.resolve("study.xmi"));
    assertEquals(1, run("import", study, file, "--as", "trials", "--apply"), printed);
    assertTrue(printed.contains(said), said + " is not said in: " + printed);
    assertFalse(printed.contains("Exception") || printed.contains("\tat "), printed);
    assertEquals(before, Files.readString(study.resolve("study.xmi")));
  }

  private void taken(Path file, String said) {
    assertEquals(0, run("import", study, file, "--as", "trials"), printed);
    assertTrue(printed.contains(said), said + " is not said in: " + printed);
  }

  private Path packed(String name, String part, byte[] content) throws Exception {
    Path file = folder.resolve(name);
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      for (String[] p : new String[][] {{"[Content_Types].xml", "<Types/>"}, {"xl/workbook.xml", "<workbook/>"}}) {
        if (!p[0].equals(part)) {
          zip.putNextEntry(new ZipEntry(p[0]));
          zip.write(p[1].getBytes(StandardCharsets.UTF_8));
          zip.closeEntry();
        }
      }
      zip.putNextEntry(new ZipEntry(part));
      zip.write(content);
      zip.closeEntry();
    }
    return file;
  }

  private Path workbook(boolean formula, boolean date) throws Exception {
    Path file = folder.resolve("in.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook(); OutputStream out = Files.newOutputStream(file)) {
      var sheet = book.createSheet("Table");
      Row head = sheet.createRow(0);
      String[] names = HEAD.split(",");
      for (int i = 0; i < names.length; i++) {
        head.createCell(i).setCellValue(names[i]);
      }
      Row row = sheet.createRow(1);
      row.createCell(0).setCellValue("S");
      row.createCell(1).setCellValue("T1");
      var cell = row.createCell(2);
      if (formula) {
        cell.setCellFormula("5+7");
      } else if (date) {
        cell.setCellValue(java.time.LocalDate.of(2031, 8, 16));
        var style = book.createCellStyle();
        style.setDataFormat((short) 14);
        cell.setCellStyle(style);
      }
      book.write(out);
    }
    return file;
  }

  @Test
  void emptyFile() throws Exception {
    refused(Files.createFile(folder.resolve("empty.csv")), "empty");
  }

  @Test
  void wrongDelimiter() throws Exception {
    Path file = csv("series;name;fired:ore_total [kg]", "S;T1;12.5");
    String before = Files.readString(study.resolve("study.xmi"));
    assertEquals(1, run("import", study, file, "--as", "trials", "--set", "delimiter=bar", "--apply"), printed);
    assertFalse(printed.contains("Exception"), printed);
    assertEquals(before, Files.readString(study.resolve("study.xmi")));
  }

  @Test
  void byteOrderMark() throws Exception {
    taken(Files.writeString(folder.resolve("bom.csv"), "\uFEFF" + HEAD + "\nS,T1,12.5\n"), "T1");
  }

  @Test
  void latin1() throws Exception {
    taken(Files.write(folder.resolve("latin.csv"), (HEAD + "\nS,Stra\u00DFe,12.5\n").getBytes(StandardCharsets.ISO_8859_1)), "Stra\u00DFe");
  }

  @Test
  void sheetOfThreeHundredColumns() throws Exception {
    StringBuilder head = new StringBuilder(HEAD);
    StringBuilder row = new StringBuilder("S,T1,12.5");
    for (int i = 0; i < 300; i++) {
      head.append(",mystery").append(i);
      row.append(",").append(i);
    }
    run("import", study, csv(head.toString(), row.toString()), "--as", "trials");
    assertTrue(printed.contains("mystery0") && !printed.contains("Exception"), printed);
  }

  @Test
  void formulaCells() throws Exception {
    run("import", study, workbook(true, false), "--as", "trials");
    assertTrue(printed.contains("formula") && !printed.contains("Exception"), printed);
  }

  @Test
  void duplicateIds() throws Exception {
    refused(csv("id," + HEAD, "t1,S,T1,12", "t1,S,T2,13"), "t1");
  }

  @Test
  void negativeMass() throws Exception {
    refused(csv(HEAD, "S,T1,-4"), "-4");
  }

  @Test
  void decimalCommaInThreeLocales() throws Exception {
    Locale before = Locale.getDefault();
    try {
      for (Locale locale : new Locale[] {Locale.US, Locale.GERMANY, Locale.of("ar", "EG")}) {
        Locale.setDefault(locale);
        taken(csv("series;name;fired:ore_total [kg]", "S;T1;12,5"), "12,5");
        assertTrue(printed.contains("12,5") && !printed.contains("125 kg"), printed);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void dateInANumberColumn() throws Exception {
    refused(workbook(false, true), "date");
  }

  @Test
  void externalEntity() throws Exception {
    byte[] part = "<?xml version=\"1.0\"?><!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/hostname\">]><workbook>&e;</workbook>".getBytes(StandardCharsets.UTF_8);
    refused(packed("entity.xlsx", "xl/workbook.xml", part), "declares a document type");
  }

  @Test
  void zipBomb() throws Exception {
    refused(packed("bomb.xlsx", "xl/worksheets/sheet1.xml", new byte[400_000_000]), "bomb.xlsx");
  }

  @Test
  void truncatedStudy() throws Exception {
    Path file = study.resolve("study.xmi");
    byte[] whole = Files.readAllBytes(file);
    Files.write(file, Arrays.copyOf(whole, whole.length / 2));
    assertEquals(1, run("check", study), printed);
    assertTrue(printed.contains("the file cannot be read") && !printed.contains("\tat "), printed);
  }

  @Test
  void paperIsWrittenFromAStudyThatIsOnlyRead() throws Exception {
    Path sheets = folder.resolve("sheets.pdf");
    assertEquals(0, run("sheets", study, "--out", sheets, "--paper", "letter", "--language", "de"), printed);
    assertTrue(Files.size(sheets) > 10_000);
    Path labels = folder.resolve("labels.pdf");
    assertEquals(1, run("labels", study, "--out", labels));
    assertTrue(printed.contains("no sample") && !Files.exists(labels), printed);
    assertEquals(1, run("sheets", study, "--out", sheets, "--trial", "T9"));
    assertTrue(printed.contains("T9"), printed);
  }
}
