package daubline.publication;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyComparison;
import daubline.analysis.StudyResults;
import daubline.analysis.deposit.DepositData;
import daubline.analysis.deposit.Disclosure;
import daubline.model.EvidenceSheet;
import daubline.model.Site;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.session.StudySession;
import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.NodeList;

/**
 * Names in many writings come out of every file as they went in: from right to left with marks and brackets, letters outside the
 * first plane, and a letter with its accent apart, which no program may put together.
 */
class WritingsTest {

  private static final String ARABIC = "تلّ الحديد ١٢";
  private static final String HEBREW = "חורבת הברזל (שדה 4)";
  private static final String MIXED = "Ofen 3 – فرن (B)";
  private static final String JAPANESE = "たたら製鉄";
  private static final String APART = "Cafe\u0301 Ždár";
  private static final String UGARITIC = "𐎀𐎁";
  private static final List<String> TRIALS = List.of(HEBREW, MIXED, JAPANESE, APART, UGARITIC);

  @TempDir
  static Path folder;

  private static StudyResults results;

  @BeforeAll
  static void publish() throws Exception {
    Path copy = folder.resolve("study");
    try (StudySession session = StudySession.read(Path.of("seeds/aldervale"))) {
      session.saveCopy(copy);
    }
    try (StudySession session = StudySession.open(copy)) {
      session.edit("names", () -> rename(session.study()));
      session.save();
    }
    try (StudySession session = StudySession.read(copy)) {
      results = StudyComparison.of(session, new ComparisonOptions(false, List.of(), List.of(), 100, 1, 1));
      Publication.write(results, Optional.of(DepositData.of(session, Disclosure.standard())), folder.resolve("out"),
          PublicationOptions.standard("0.0", List.of()).with(new FigureOptions(Set.of("svg", "pdf"), 100, Double.NaN))
              .with(new DepositOptions(List.of(), "", 2031, "", "")), Progress.NONE);
    }
  }

  private static void rename(Study study) {
    study.setName(ARABIC);
    Site site = study.getSites().get(0);
    site.setName(ARABIC);
    EvidenceSheet sheet = site.getContexts().get(0).getSheets().get(0);
    sheet.setName(ARABIC);
    List<Trial> trials = study.getSeries().get(0).getTrials();
    for (int i = 0; i < TRIALS.size(); i++) {
      trials.get(i).setName(TRIALS.get(i));
    }
    study.getCitations().get(0).setTitle(HEBREW);
  }

  private static List<Path> files(String ending) throws IOException {
    try (Stream<Path> all = Files.walk(folder.resolve("out"))) {
      return all.filter(f -> f.toString().endsWith(ending)).sorted().toList();
    }
  }

  private static void has(String where, String text, String... names) {
    List<String> missing = Stream.of(names).filter(n -> !text.contains(n)).toList();
    assertEquals(List.of(), missing, where);
    assertTrue(!text.contains("\uFFFD"), where + " holds a sign for what could not be written");
  }

  private static final String[] ALL = Stream.concat(Stream.of(ARABIC), TRIALS.stream()).toArray(String[]::new);

  @Test
  void theStudyItself() throws Exception {
    try (StudySession again = StudySession.read(folder.resolve("study"))) {
      assertEquals(ARABIC, again.study().getSites().get(0).getName());
      assertEquals(TRIALS, again.study().getSeries().get(0).getTrials().stream().limit(TRIALS.size()).map(Trial::getName).toList());
    }
  }

  @Test
  void separatedValuesOfArchiveSpreadsheetAndDeposit() throws Exception {
    for (String part : List.of("archive", "spreadsheet", "deposit")) {
      List<String> cells = new ArrayList<>();
      for (Path file : files(".csv")) {
        if (file.toString().contains(part)) {
          String text = Files.readString(file).replaceFirst("^\uFEFF", "");
          // above and below the rows of a table stand its caption and its notes
          try (var rows = CsvReader.builder().allowExtraFields(true).allowMissingFields(true).ofCsvRecord(text)) {
            rows.forEach(r -> cells.addAll(r.getFields()));
          }
        }
      }
      for (String name : ALL) {
        assertTrue(cells.contains(name), part + " has no cell " + name);
      }
    }
  }

  @Test
  void theWorkbook() throws Exception {
    try (InputStream in = Files.newInputStream(folder.resolve("out/tables.xlsx")); XSSFWorkbook book = new XSSFWorkbook(in)) {
      String text = StreamSupport.stream(book.spliterator(), false).flatMap(s -> StreamSupport.stream(s.spliterator(), false))
          .flatMap(r -> StreamSupport.stream(r.spliterator(), false)).map(Object::toString).collect(Collectors.joining("\n"));
      has("tables.xlsx", text, ALL);
    }
  }

  @Test
  void documents() throws Exception {
    for (String file : List.of("tables.docx", "report.docx")) {
      try (InputStream in = Files.newInputStream(folder.resolve("out").resolve(file)); XWPFDocument document = new XWPFDocument(in)) {
        String text = document.getTables().stream().map(t -> t.getText()).collect(Collectors.joining("\n"))
            + document.getParagraphs().stream().map(p -> p.getText()).collect(Collectors.joining("\n"));
        has(file, text, ALL);
      }
    }
  }

  @Test
  void pagesReferencesLatexAndMarkdown() throws Exception {
    has("report.html", Files.readString(folder.resolve("out/report.html")), ALL);
    has("references.bib", Files.readString(folder.resolve("out/references.bib")), HEBREW);
    for (String kind : List.of(".tex", ".md")) {
      StringBuilder all = new StringBuilder();
      for (Path file : files(kind)) {
        all.append(Files.readString(file));
      }
      has(kind, all.toString(), ALL);
    }
  }

  @Test
  void jsonOfTheDeposit() throws Exception {
    List<String> texts = new ArrayList<>();
    try (JsonParser parser = new JsonFactory().createParser(folder.resolve("out/deposit/datapackage.json").toFile())) {
      while (parser.nextToken() != null) {
        if (parser.currentToken() == JsonToken.VALUE_STRING) {
          texts.add(parser.getText());
        }
      }
    }
    assertTrue(texts.contains(ARABIC), "the name of the study");
  }

  @Test
  void drawingsThatScale() throws Exception {
    StringBuilder all = new StringBuilder();
    for (Path file : files(".svg")) {
      NodeList texts = DocumentBuilderFactory.newDefaultNSInstance().newDocumentBuilder().parse(file.toFile()).getDocumentElement().getElementsByTagName("*");
      for (int i = 0; i < texts.getLength(); i++) {
        all.append(texts.item(i).getNodeName().endsWith("text") || texts.item(i).getNodeName().endsWith("desc") ? texts.item(i).getTextContent() + "\n" : "");
      }
    }
    has("svg", all.toString(), ALL);
  }

  /** The lettering of other writings is drawn as outlines; what the file says of itself stays text. */
  @Test
  void portableDocuments() throws Exception {
    List<Path> files = files(".pdf");
    assertTrue(files.size() > 3, files.toString());
    StringBuilder subjects = new StringBuilder();
    for (Path file : files) {
      try (PDDocument document = Loader.loadPDF(file.toFile())) {
        subjects.append(document.getDocumentInformation().getSubject()).append('\n');
        assertTrue(document.getNumberOfPages() > 0, file.toString());
      }
    }
    has("pdf", subjects.toString(), ARABIC);
  }
}
