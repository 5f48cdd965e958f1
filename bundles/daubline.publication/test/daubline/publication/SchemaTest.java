package daubline.publication;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.zip.ZipFile;
import org.apache.xmlbeans.XmlError;
import org.apache.xmlbeans.XmlException;
import org.apache.xmlbeans.XmlObject;
import org.apache.xmlbeans.XmlOptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openxmlformats.schemas.drawingml.x2006.chart.ChartSpaceDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.StyleSheetDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorkbookDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorksheetDocument;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.DocumentDocument;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.StylesDocument;

/**
 * Documents and workbook against the schemas of ECMA-376 part 1 (transitional), which are compiled into the classes of the
 * library that reads such files. That library carries the parts of the schemas that it uses itself; an element that it does
 * not know is an error here. It carries none of the parts that name tables, which WorkbookTest reads back instead.
 */
class SchemaTest {

  /** A parser of one kind of part. */
  private interface Parser {
    XmlObject parse(String xml) throws XmlException;
  }

  private static final Map<String, Parser> PARTS = new LinkedHashMap<>();

  static {
    PARTS.put("word/document.xml", DocumentDocument.Factory::parse);
    PARTS.put("word/styles.xml", StylesDocument.Factory::parse);
    PARTS.put("xl/workbook.xml", WorkbookDocument.Factory::parse);
    PARTS.put("xl/styles.xml", StyleSheetDocument.Factory::parse);
    PARTS.put("xl/worksheets/sheet[0-9]+.xml", WorksheetDocument.Factory::parse);
    PARTS.put("xl/charts/chart[0-9]+.xml", ChartSpaceDocument.Factory::parse);
  }

  @TempDir
  static Path folder;

  @BeforeAll
  static void write() throws Exception {
    Publication.write(PublicationTest.results("aldervale", 2), Optional.empty(), folder.resolve("out"),
        PublicationOptions.standard("0.0", List.of()).with(new FigureOptions(Set.of(), 300, Double.NaN)), Progress.NONE);
  }

  private static int validate(String file, List<String> wrong) throws Exception {
    int validated = 0;
    try (ZipFile zip = new ZipFile(folder.resolve("out").resolve(file).toFile())) {
      for (var entry : java.util.Collections.list(zip.entries())) {
        Optional<Parser> parser = PARTS.entrySet().stream().filter(p -> entry.getName().matches(p.getKey())).map(Map.Entry::getValue).findFirst();
        if (parser.isPresent()) {
          try (InputStream in = zip.getInputStream(entry)) {
            List<XmlError> errors = new ArrayList<>();
            // the library carries no schema of this one element
            String xml = new String(in.readAllBytes(), StandardCharsets.UTF_8).replaceAll("<(c:)?pageSetup[^>]*/>", "");
            parser.get().parse(xml).validate(new XmlOptions().setErrorListener(errors));
            errors.stream().limit(3).forEach(e -> wrong.add(file + ", " + entry.getName() + ": " + e.getMessage()));
            validated++;
          }
        }
      }
    }
    return validated;
  }

  @Test
  void documentsKeepTheSchema() throws Exception {
    List<String> wrong = new ArrayList<>();
    assertEquals(2, validate("tables.docx", wrong));
    assertEquals(2, validate("report.docx", wrong));
    assertEquals(List.of(), wrong);
  }

  @Test
  void theWorkbookKeepsTheSchema() throws Exception {
    List<String> wrong = new ArrayList<>();
    assertTrue(validate("tables.xlsx", wrong) > 25);
    assertEquals(List.of(), wrong);
  }
}
