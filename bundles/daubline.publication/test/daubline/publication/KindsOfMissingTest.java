package daubline.publication;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyComparison;
import daubline.analysis.StudyResults;
import daubline.analysis.deposit.DepositData;
import daubline.analysis.deposit.Disclosure;
import daubline.base.Amount;
import daubline.base.ValueKind;
import daubline.export.Style;
import daubline.export.TableOptions;
import daubline.model.Analysis;
import daubline.model.Component;
import daubline.session.Readings;
import daubline.session.StudySession;
import de.siegmar.fastcsv.reader.CsvReader;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFTableRow;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A zero, a limit and five reasons for having no value stay seven different things in everything that is published. */
class KindsOfMissingTest {

  private static final String NAME = "SEVENFOLD";
  private static final List<String> OXIDES = List.of("SiO2", "TiO2", "Al2O3", "CaO", "MnO", "K2O", "Na2O");
  private static final List<Amount> AMOUNTS = List.of(Amount.exact(0), Amount.belowLimit(0.0005), Amount.of(ValueKind.NOT_ANALYSED),
      Amount.of(ValueKind.NOT_DETECTED), Amount.of(ValueKind.BELOW_DETECTION), Amount.of(ValueKind.TRACE), Amount.of(ValueKind.NOT_RECORDED));
  private static final List<String> FOR_MACHINES = List.of("0", "<0.05", "n.a.", "n.d.", "bdl", "trace", "not recorded");
  private static final List<String> PRINTED = List.of("0.00", "<0.05", "n.a.", "n.d.", "bdl", "tr.", "–");

  @TempDir
  static Path folder;

  @BeforeAll
  static void publish() throws Exception {
    try (StudySession session = StudySession.read(Path.of("seeds/aldervale"))) {
      session.study().eAllContents().forEachRemaining(o -> {
        if (o instanceof Analysis analysis && analysis.getName().equals("AV01-T, bulk")) {
          analysis.setName(NAME);
          for (Component component : analysis.getComponents()) {
            int place = OXIDES.indexOf(component.getSymbol());
            if (place >= 0) {
              Readings.put(component, AMOUNTS.get(place));
            }
          }
        }
      });
      StudyResults results = StudyComparison.of(session, new ComparisonOptions(false, List.of(), List.of(), 100, 1, 1));
      Publication.write(results, Optional.of(DepositData.of(session, Disclosure.standard())), folder, PublicationOptions.standard("0.0", List.of())
          .with(new FigureOptions(Set.of(), 300, Double.NaN)).with(new TableOptions(OXIDES, TableOptions.Iron.AS_PRINTED))
          .with(new DepositOptions(List.of(), "", 2031, "", "")), Progress.NONE);
    }
  }

  /** The cells of the seven oxides, which stand first after six columns of words, among the rows of one form. */
  private static List<String> seven(List<List<String>> rows, int words) {
    List<List<String>> found = rows.stream().filter(r -> r.contains(NAME) && r.contains("measured")).toList();
    assertEquals(1, found.size(), "rows of the analysis as measured");
    return found.get(0).subList(words, words + OXIDES.size());
  }

  private static List<List<String>> csv(String file, char separator) throws Exception {
    try (var reader = CsvReader.builder().fieldSeparator(separator).ofCsvRecord(folder.resolve(file))) {
      return reader.stream().map(r -> r.getFields()).toList();
    }
  }

  @Test
  void inTheArchive() throws Exception {
    assertEquals(FOR_MACHINES, seven(csv("archive/chemistry.csv", ','), 6));
  }

  @Test
  void inTheSpreadsheetFile() throws Exception {
    List<String> cells = seven(csv("spreadsheet/chemistry.csv", ','), 6);
    assertEquals(7, new HashSet<>(cells).size(), cells.toString());
    assertEquals("<0.05", cells.get(1));
  }

  @Test
  void inTheWorkbook() throws Exception {
    try (InputStream in = Files.newInputStream(folder.resolve("tables.xlsx")); XSSFWorkbook book = new XSSFWorkbook(in)) {
      DataFormatter format = new DataFormatter();
      List<List<String>> rows = StreamSupport.stream(book.getSheet("Bulk Chemistry").spliterator(), false).map(row -> cells(row, format)).toList();
      List<String> cells = seven(rows, 6);
      assertEquals(FOR_MACHINES.subList(1, 7), cells.subList(1, 7));
      assertEquals(0, Double.parseDouble(cells.get(0)));
    }
  }

  private static List<String> cells(Row row, DataFormatter format) {
    return java.util.stream.IntStream.range(0, row.getLastCellNum()).mapToObj(c -> format.formatCellValue(row.getCell(c))).toList();
  }

  @Test
  void inBothDocuments() throws Exception {
    for (String file : List.of("tables.docx", "report.docx")) {
      try (InputStream in = Files.newInputStream(folder.resolve(file)); XWPFDocument document = new XWPFDocument(in)) {
        List<List<String>> rows = document.getTables().stream().flatMap(t -> t.getRows().stream()).map(KindsOfMissingTest::cells).toList();
        assertEquals(PRINTED, seven(rows, 6), file);
      }
    }
  }

  private static List<String> cells(XWPFTableRow row) {
    return row.getTableCells().stream().map(c -> c.getText().strip()).toList();
  }

  @Test
  void inLatex() throws Exception {
    List<List<String>> rows = Files.readAllLines(folder.resolve("latex/chemistry.tex")).stream().map(l -> Arrays.asList(l.replace(" \\\\", "").split(" & "))).toList();
    assertEquals(PRINTED.stream().map(p -> p.replace("<", "\\textless{}")).toList(), seven(rows, 6));
  }

  @Test
  void inMarkdown() throws Exception {
    List<List<String>> rows = Files.readAllLines(folder.resolve("markdown/chemistry.md")).stream().filter(l -> l.startsWith("| "))
        .map(l -> Arrays.asList(l.substring(2).split(" \\| "))).toList();
    assertEquals(PRINTED.stream().map(p -> p.replace("<", "\\<")).toList(), seven(rows, 6));
  }

  @Test
  void inTheReport() throws Exception {
    List<List<String>> rows = Files.readAllLines(folder.resolve("report.html")).stream().filter(l -> l.startsWith("<tr><td")).map(KindsOfMissingTest::htmlCells).toList();
    assertEquals(PRINTED.stream().map(p -> p.replace("<", "&lt;")).toList(), seven(rows, 6));
  }

  private static List<String> htmlCells(String line) {
    Matcher cell = Pattern.compile("<td[^>]*>(.*?)</td>").matcher(line);
    return cell.results().map(r -> r.group(1)).toList();
  }

  @Test
  void inTheDeposit() throws Exception {
    List<List<String>> rows = csv("deposit/data/component.csv", ',');
    List<String> heading = rows.get(0);
    String analysis = csv("deposit/data/analysis.csv", ',').stream().filter(r -> r.contains(NAME)).findFirst().orElseThrow().get(0);
    List<String> values = OXIDES.stream().map(oxide -> {
      List<String> row = rows.stream().filter(r -> r.get(heading.indexOf("held_by")).equals(analysis) && r.get(heading.indexOf("symbol")).equals(oxide)).findFirst().orElseThrow();
      return row.get(heading.indexOf("kind")) + " " + row.get(heading.indexOf("value"));
    }).toList();
    assertEquals(List.of("EXACT 0.0", "BELOW_LIMIT 5.0E-4", "NOT_ANALYSED NOT_ANALYSED", "NOT_DETECTED NOT_DETECTED", "BELOW_DETECTION BELOW_DETECTION",
        "TRACE TRACE", "NOT_RECORDED NOT_RECORDED"), values);
  }

  @Test
  void whenReadAloudAndInPlainPrint() {
    for (Style style : List.of(Style.PLAIN, Style.ACCESSIBLE)) {
      Set<String> words = new HashSet<>();
      AMOUNTS.forEach(a -> words.add(style.print(daubline.export.Cell.amount(a, daubline.base.Units.canonical(daubline.base.Quantity.FRACTION), null))));
      assertEquals(AMOUNTS.size(), words.size(), style.preset() + ": " + words);
      assertTrue(words.stream().noneMatch(String::isBlank));
    }
  }
}
