package daubline.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Finding;
import daubline.session.StudySession;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Bad files get one clear finding that says what, where and how to mend it, and leave the study as it was. All data
 * invented.
 */
class BadInputTest {

  @TempDir
  Path folder;

  private StudySession session;
  private String digest;

  @BeforeEach
  void open() throws Exception {
    session = Studies.withTrials(folder);
    digest = session.digest();
  }

  @AfterEach
  void nothingWasChanged() {
    assertEquals(digest, session.digest());
    session.close();
  }

  private Preview look(Path file, Target target) {
    return Intake.preview(session, file, target, IntakeOptions.none());
  }

  /** The file is refused for one reason, which has a place and a remedy, and cannot be applied. */
  private Finding refused(Path file, Target target, String code) {
    Preview preview = look(file, target);
    List<Finding> errors = preview.findings().stream().filter(Finding::isError).toList();
    assertEquals(List.of(code), errors.stream().map(Finding::code).distinct().toList(), errors.toString());
    errors.forEach(e -> assertFalse(e.where().isBlank() || e.what().isBlank() || e.remedy().isBlank(), e.toString()));
    assertThrows(IntakeException.class, () -> preview.apply(session));
    return errors.get(0);
  }

  private Path csv(String... lines) throws Exception {
    return Books.csv(folder, "in.csv", lines);
  }

  private Path bytes(String name, byte[] content) throws Exception {
    return Files.write(folder.resolve(name), content);
  }

  @Test
  void emptyFile() throws Exception {
    refused(bytes("in.csv", new byte[0]), Target.TRIALS, "file.empty");
    refused(bytes("spaces.csv", "  \n\n".getBytes(StandardCharsets.UTF_8)), Target.TRIALS, "file.empty");
    refused(csv("name,series"), Target.TRIALS, "table.empty");
    refused(folder.resolve("nowhere.csv"), Target.TRIALS, "file.none");
  }

  @Test
  void wrongDelimiter() throws Exception {
    Path file = csv("trial;class;mass [kg]", "T1;Tapped slag;4.2");
    assertTrue(look(file, Target.RESIDUES).canApply());
    Preview wrong = Intake.preview(session, file, Target.RESIDUES, options("delimiter", "comma"));
    assertEquals(List.of("header.none", "csv.delimiter"), Studies.codes(wrong));
    assertTrue(Studies.finding(wrong, "csv.delimiter").what().contains("semicolon"), wrong.findings().toString());
  }

  @Test
  void byteOrderMarkAndUtf16AreRead() throws Exception {
    String text = "series,name,note\nSeason 2031,T9,Öfen bei 1200 °C\n";
    for (byte[] content : List.of(("\uFEFF" + text).getBytes(StandardCharsets.UTF_8),
        ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE),
        ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16BE), text.getBytes(StandardCharsets.UTF_16LE),
        text.getBytes(StandardCharsets.UTF_8))) {
      Preview preview = look(bytes("in.csv", content), Target.TRIALS);
      assertEquals(List.of(), Studies.codes(preview), preview.findings().toString());
      assertEquals("Season 2031 · T9 · Öfen bei 1200 °C", preview.rows().get(0).name());
    }
  }

  @Test
  void latin1IsReadAndSaid() throws Exception {
    Preview latin = look(bytes("in.csv",
        "series,name,note\nSeason 2031,T9,Öfen 1200 °C\n".getBytes(StandardCharsets.ISO_8859_1)), Target.TRIALS);
    assertEquals(List.of("file.encoding"), Studies.codes(latin));
    assertTrue(Studies.finding(latin, "file.encoding").what().contains("Latin-1"));
    assertTrue(latin.rows().get(0).name().endsWith("Öfen 1200 °C"));
    Preview windows = look(bytes("in.csv",
        "series,name,note\nSeason 2031,T9,“quoted” – 5 €\n".getBytes(Charset.forName("windows-1252"))), Target.TRIALS);
    assertTrue(Studies.finding(windows, "file.encoding").what().contains("Windows-1252"));
    assertTrue(windows.rows().get(0).name().endsWith("“quoted” – 5 €"));
  }

  @Test
  void sheetOfThreeHundredColumns() throws Exception {
    String more = String.join(",", IntStream.range(0, 297).mapToObj(i -> "quux" + i).toList());
    String cells = String.join(",", IntStream.range(0, 297).mapToObj(String::valueOf).toList());
    Preview preview = look(csv("trial,class,mass [kg]," + more, "T1,Tapped slag,4.2," + cells), Target.RESIDUES);
    assertTrue(preview.canApply());
    assertEquals(297, preview.unreadColumns().size());
    assertEquals(21, preview.findings().stream().filter(f -> f.code().equals("column.unknown")).count());
    assertEquals(3, preview.readColumns().size());
  }

  @Test
  void unknownColumnsNameTheNearestKnownOne() throws Exception {
    Preview preview = look(csv("trial,class,mass [kg],citaton", "T1,Tapped slag,4.2,x"), Target.RESIDUES);
    assertTrue(Studies.finding(preview, "column.unknown").remedy().contains("citation"));
    Preview stage = look(csv("series,name,base_internal_diameter [mm]", "Season 2031,T1,260"), Target.TRIALS);
    assertTrue(Studies.finding(stage, "column.unknown").remedy().contains("built:base_internal_diameter"));
    assertEquals(List.of("base_internal_diameter [mm]"), stage.unreadColumns());
  }

  @Test
  void formulaCellsAreNeverWorkedOut() throws Exception {
    List<List<?>> rows = List.of(List.of("trial", "class", "mass [kg]"), List.of("T1", "Tapped slag", 4));
    Path cached = Books.xlsx(folder, "cached.xlsx", rows, sheet -> {
      sheet.getRow(1).getCell(2).setCellFormula("2*2");
      sheet.getRow(1).getCell(2).setCellValue(4.25);
    });
    Preview preview = look(cached, Target.RESIDUES);
    assertTrue(Studies.finding(preview, "cell.formula").what().contains("C2"));
    assertTrue(preview.canApply());
    assertTrue(preview.rows().get(0).name().endsWith("4.25"), "the value last worked out, not 2*2");
    Path never = Books.xlsx(folder, "never.xlsx", rows, sheet -> {
      sheet.getRow(1).removeCell(sheet.getRow(1).getCell(2));
      sheet.getRow(1).createCell(2).setCellFormula("2*2");
    });
    refused(never, Target.RESIDUES, "cell.error");
  }

  @Test
  void errorCells() throws Exception {
    Path file = Books.xlsx(folder, "in.xlsx", List.of(List.of("trial", "class", "mass [kg]"), List.of("T1", "Tapped slag", 4)),
        sheet -> sheet.getRow(1).getCell(2).setCellErrorValue(FormulaError.DIV0));
    Finding finding = refused(file, Target.RESIDUES, "cell.error");
    assertTrue(finding.where().contains("cell C2") && finding.what().contains("#DIV/0!"), finding.toString());
  }

  @Test
  void duplicateIdsAndRows() throws Exception {
    String used = session.study().getSeries().get(0).getTrials().get(0).getId();
    refused(csv("series,name,number", "Season 2031,T1,1", "Season 2031,T1,2"), Target.TRIALS, "row.duplicate");
    refused(csv("id,series,name", used + ",Season 2031,T1", used + ",Season 2031,T2"), Target.TRIALS, "row.duplicate");
    refused(csv("id,name,material", used + ",Ore,ore"), Target.LOTS, "id.taken");
    Preview alike = look(csv("series,name,number", "Season 2031,T9,1", "Season 2031,T9,1"), Target.TRIALS);
    assertEquals(List.of("row.duplicate"), Studies.codes(alike));
    assertEquals(1, alike.count(PreviewRow.State.ADDED));
  }

  @Test
  void negativeMass() throws Exception {
    Finding finding = refused(csv("trial,class,mass [kg]", "T1,Tapped slag,-4.2"), Target.RESIDUES, "value.negative");
    assertTrue(finding.where().contains("row 2, column 3"), finding.toString());
    refused(csv("trial,class,mass [kg],count", "T1,Tapped slag,4.2,-3"), Target.RESIDUES, "value.negative");
    refused(csv("trial,time,kind,charge_mass_ore [kg]", "T1,10:00,charge,-0.5"), Target.LOG, "value.negative");
  }

  @Test
  void decimalCommaInThreeLocales() throws Exception {
    Locale before = Locale.getDefault();
    try {
      for (Locale locale : List.of(Locale.US, Locale.GERMANY, Locale.FRANCE)) {
        Locale.setDefault(locale);
        assertTrue(mass(csv("trial;class;mass [kg]", "T1;Tapped slag;12,5")).contains("12.5"), locale.toString());
        assertTrue(mass(csv("trial,class,mass [kg]", "T1,Tapped slag,\"12,5\"")).contains("12.5"), locale.toString());
        assertTrue(mass(csv("trial;class;mass [kg]", "T1;Tapped slag;12.5")).contains("12.5"), locale.toString());
        Finding finding = refused(csv("trial,class,mass [kg]", "T1,Tapped slag,12,5"), Target.RESIDUES, "row.long");
        assertTrue(finding.remedy().contains("quotation marks"));
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  private String mass(Path file) throws Exception {
    look(file, Target.RESIDUES).apply(session);
    double mass = session.study().getSeries().get(0).getTrials().get(0).getRemains().getResidues().get(0).getValue();
    session.undo();
    return String.valueOf(mass);
  }

  @Test
  void decimalSignsThatContradictOrDoNotTell() throws Exception {
    refused(csv("trial;class;mass [kg]", "T1;Tapped slag;12,5", "T2;Tapped slag;12.5"), Target.RESIDUES, "number.mixed");
    Path file = csv("trial;class;mass [kg]", "T1;Tapped slag;1,234");
    Finding asked = refused(file, Target.RESIDUES, "number.ambiguous");
    assertTrue(asked.remedy().contains("decimal=comma"));
    assertTrue(Intake.preview(session, file, Target.RESIDUES, options("decimal", "comma")).canApply());
    refused(csv("trial;class;mass [kg]", "T1;Tapped slag;1.234,5", "T2;Tapped slag;2,5"), Target.RESIDUES, "number.grouped");
    refused(csv("trial,class,mass [kg]", "T1,Tapped slag,12.5abc"), Target.RESIDUES, "number.text");
  }

  @Test
  void dateInANumberColumn() throws Exception {
    refused(csv("trial,class,mass [kg]", "T1,Tapped slag,03.05.2031"), Target.RESIDUES, "cell.date");
    Path file = Books.xlsx(folder, "in.xlsx", List.of(List.of("trial", "class", "mass [kg]"), List.of("T1", "Tapped slag",
        4)), sheet -> {
      CellStyle date = sheet.getWorkbook().createCellStyle();
      date.setDataFormat((short) 14);
      sheet.getRow(1).getCell(2).setCellValue(LocalDate.of(2031, 5, 3));
      sheet.getRow(1).getCell(2).setCellStyle(date);
    });
    Finding finding = refused(file, Target.RESIDUES, "cell.date");
    assertTrue(finding.what().contains("2031-05-03") && finding.where().contains("cell C2"), finding.toString());
  }

  @Test
  void datesWhoseOrderIsNotTold() throws Exception {
    Path file = csv("series,name,date", "Season 2031,T1,03/04/2031");
    refused(file, Target.TRIALS, "date.ambiguous");
    assertTrue(Intake.preview(session, file, Target.TRIALS, options("dates", "dmy")).canApply());
    assertTrue(look(csv("series,name,date", "Season 2031,T1,03/04/2031", "Season 2031,T2,25/04/2031"),
        Target.TRIALS).canApply());
    refused(csv("series,name,date", "Season 2031,T1,31.02.2031"), Target.TRIALS, "date.form");
  }

  @Test
  void unknownUnits() throws Exception {
    Finding finding = refused(csv("trial,class,mass [stone]", "T1,Tapped slag,4.2"), Target.RESIDUES, "unit.unknown");
    assertTrue(finding.remedy().contains("kg, g"));
    refused(csv("site,sheet,variable,value,unit", "Hollin Beck,F1,base_internal_diameter,260,furlong"), Target.CLAIMS,
        "unit.unknown");
  }

  @Test
  void mergedCellsHiddenRowsAndOtherSheetsAreSaid() throws Exception {
    Path file = Books.xlsx(folder, "in.xlsx", List.of(List.of("trial", "class", "mass [kg]"), List.of("T1", "Tapped slag",
        4), List.of("T2", "Tapped slag", 5)), sheet -> {
      sheet.addMergedRegion(new CellRangeAddress(4, 5, 0, 0));
      sheet.getRow(2).setZeroHeight(true);
      sheet.setColumnHidden(1, true);
      XSSFSheet second = sheet.getWorkbook().createSheet("Other");
      second.createRow(0).createCell(0).setCellValue("something");
    });
    assertEquals(List.of("row.hidden", "column.hidden", "cell.merged", "sheet.chosen"),
        Studies.codes(look(file, Target.RESIDUES)));
    Preview other = Intake.preview(session, file, Target.RESIDUES, options("sheet", "Tabel"));
    assertEquals(List.of("sheet.unknown"), Studies.codes(other));
    assertTrue(other.findings().get(0).remedy().contains("Table"));
  }

  @Test
  void zipBombIsRefusedBeforeItIsOpened() throws Exception {
    byte[] zeros = new byte[64 << 20];
    Arrays.fill(zeros, (byte) ' ');
    Map<String, byte[]> parts = new LinkedHashMap<>();
    parts.put("[Content_Types].xml", "<Types/>".getBytes(StandardCharsets.UTF_8));
    parts.put("xl/worksheets/sheet1.xml", zeros);
    Path file = bytes("bomb.xlsx", Books.zip(parts));
    assertTrue(Files.size(file) < 1 << 20);
    refused(file, Target.TRIALS, "xlsx.bomb");
  }

  @Test
  void externalEntityIsRefused() throws Exception {
    Path secret = Files.writeString(folder.resolve("secret.txt"), "T1");
    String attack = "<?xml version=\"1.0\"?><!DOCTYPE x [<!ENTITY e SYSTEM \"" + secret.toUri()
        + "\">]><worksheet>&e;</worksheet>";
    for (Charset charset : List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16)) {
      Map<String, byte[]> parts = new LinkedHashMap<>();
      parts.put("xl/workbook.xml", "<workbook/>".getBytes(StandardCharsets.UTF_8));
      parts.put("xl/worksheets/sheet1.xml", attack.getBytes(charset));
      Finding finding = refused(bytes("entity.xlsx", Books.zip(parts)), Target.TRIALS, "xlsx.doctype");
      assertTrue(finding.where().contains("sheet1.xml"));
    }
  }

  @Test
  void encryptedOldAndOtherFilesAreToldApart() throws Exception {
    refused(bytes("in.xlsx", compound("EncryptedPackage")), Target.TRIALS, "xlsx.encrypted");
    refused(bytes("in.xls", compound("Workbook")), Target.TRIALS, "xlsx.old");
    refused(bytes("in.doc", compound("WordDocument")), Target.TRIALS, "file.kind");
    refused(bytes("in.ods", Books.zip(Map.of("mimetype", new byte[1], "content.xml", new byte[1]))), Target.TRIALS,
        "xlsx.opendocument");
    refused(bytes("in.xlsb", Books.zip(Map.of("xl/workbook.bin", new byte[1]))), Target.TRIALS, "xlsx.binary");
    refused(bytes("in.zip", Books.zip(Map.of("readme.txt", new byte[1]))), Target.TRIALS, "file.kind");
    refused(bytes("in.png", new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 0, 0, 1}), Target.TRIALS, "file.kind");
  }

  private static byte[] compound(String entry) throws Exception {
    try (POIFSFileSystem files = new POIFSFileSystem(); ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      files.createDocument(new ByteArrayInputStream(new byte[5000]), entry);
      files.writeFilesystem(out);
      return out.toByteArray();
    }
  }

  @Test
  void cutOffWorkbook() throws Exception {
    Path whole = Books.xlsx(folder, "whole.xlsx", List.of(List.of("name"), List.of("T1")), s -> { });
    byte[] content = Files.readAllBytes(whole);
    refused(bytes("cut.xlsx", Arrays.copyOf(content, content.length / 2)), Target.TRIALS, "file.broken");
  }

  @Test
  void headingsOfAnotherForm() throws Exception {
    Finding finding = refused(csv("foo,bar", "1,2"), Target.TRIALS, "header.none");
    assertTrue(finding.remedy().contains("template trials"));
    refused(csv("trial,mass [kg]", "T1,4"), Target.RESIDUES, "column.missing");
    refused(csv("trial,class,mass [kg],mass [g]", "T1,Tapped slag,4,4000"), Target.RESIDUES, "column.twice");
  }

  @Test
  void namesThatLeadNowhere() throws Exception {
    assertTrue(refused(csv("trial,class,mass [kg]", "T11,Tapped slag,4"), Target.RESIDUES,
        "trial.unknown").remedy().contains("T1"));
    assertTrue(refused(csv("trial,class,mass [kg]", "T1,Taped slag,4"), Target.RESIDUES,
        "class.unknown").remedy().contains("Tapped slag"));
    assertTrue(refused(csv("site,sheet,variable,value", "B,F1,base_internal_diametre,260"), Target.CLAIMS,
        "variable.unknown").remedy().contains("base_internal_diameter"));
    assertTrue(refused(csv("series,name,kind", "Season 2031,T1,experimnt"), Target.TRIALS,
        "word.unknown").remedy().contains("experiment"));
    assertTrue(refused(csv("series,name,lots", "Season 2031,T1,Bog oar"), Target.TRIALS,
        "lot.unknown").remedy().contains("Bog ore"));
    refused(csv("trial,time,kind", "T3,10:00,note"), Target.LOG, "time.day");
    refused(csv("trial,time,kind", "T1,25:00,note"), Target.LOG, "time.form");
    refused(csv("site,sheet,variable,value,kind", "B,F1,base_internal_diameter,240–260,at least"), Target.CLAIMS,
        "kind.conflict");
  }

  @Test
  void quotationMarkThatIsNotClosed() throws Exception {
    List<String> lines = new ArrayList<>(List.of("series,name,note", "Season 2031,T1,\"open"));
    IntStream.range(0, 40).forEach(i -> lines.add("Season 2031,T1" + i + ",x"));
    refused(csv(lines.toArray(String[]::new)), Target.TRIALS, "csv.quote");
  }

  @Test
  void settingsThatMakeNoSense() {
    for (String[] bad : new String[][] {{"decimal", "dot"}, {"delimiter", "a"}, {"encoding", "klingon"}, {"header", "0"},
        {"dates", "mdx"}, {"colour", "red"}}) {
      IntakeException e = assertThrows(IntakeException.class, () -> IntakeOptions.none().with(bad[0], bad[1]));
      assertFalse(e.findings().get(0).remedy().isBlank());
    }
  }

  private static IntakeOptions options(String key, String value) throws IntakeException {
    return IntakeOptions.none().with(key, value);
  }


  @Test
  void workbookWithoutAnything() throws Exception {
    try (XSSFWorkbook workbook = new XSSFWorkbook(); ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      workbook.createSheet("Empty");
      workbook.write(out);
      refused(bytes("in.xlsx", out.toByteArray()), Target.TRIALS, "file.empty");
    }
  }
}
