package daubline.export.format;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.export.Cell;
import daubline.export.Column;
import daubline.export.Style;
import daubline.export.Table;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFTable;
import org.junit.jupiter.api.Test;

/** Tables as Markdown, LaTeX, HTML and in a document. */
class PrintFormsTest {

  @Test
  void markdownKeepsSignsThatMeanSomethingToIt() {
    String text = new Markdown(Style.JOURNAL).text(Samples.words("a|b", "*x*", "<script>"));
    assertTrue(text.contains("| a\\|b |\n| \\*x\\* |\n| \\<script\\> |"), text);
    assertTrue(new Markdown(Style.JOURNAL).text(Samples.kinds()).contains("| 1E5 | −255 \\[1\\] | says \"twice\", in full |"));
  }

  @Test
  void latexEscapesAndNumbersFootnotes() {
    String text = new Latex(Style.JOURNAL).text(Samples.words("50 % & $x_1$ #{~^\\}"));
    assertTrue(text.contains("50 \\% \\& \\$x\\_1\\$ \\#\\{\\textasciitilde{}\\textasciicircum{}\\textbackslash{}\\} \\\\"), text);
    String kinds = new Latex(Style.JOURNAL).text(Samples.kinds());
    assertTrue(kinds.contains("1E5 & $-$255\\textsuperscript{1} &"), kinds);
    assertTrue(kinds.contains("\\begin{longtable}{@{}lrl@{}}"), kinds);
  }

  @Test
  void htmlIsWellFormedAndMarksHeadings() throws Exception {
    Table table = Samples.words("<script>alert(1)</script>", "a & b", "\u0001");
    String html = new Html(Style.JOURNAL).text(table);
    var document = DocumentBuilderFactory.newInstance().newDocumentBuilder()
        .parse(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
    assertEquals("<script>alert(1)</script>", document.getElementsByTagName("td").item(0).getTextContent());
    assertEquals("col", document.getElementsByTagName("th").item(0).getAttributes().getNamedItem("scope").getTextContent());
  }

  @Test
  void aColumnInWhichNothingStandsIsNotPrinted() {
    Table table = new Table("t", "T", "", List.of(Column.text("a", "A"), Column.text("b", "B")),
        List.of(List.of(Cell.text("x"), Cell.EMPTY)), List.of());
    assertEquals(List.of("A"), PrintTable.of(table).columns().stream().map(Column::heading).toList());
    assertTrue(new Markdown(Style.JOURNAL).text(Samples.words()).contains(PrintTable.nothing(Style.JOURNAL)));
  }

  @Test
  void theDocumentHasRealTablesAndTheSameBytesAgain() throws Exception {
    byte[] first = document();
    Thread.sleep(2100); // zip archives keep two seconds
    assertArrayEquals(first, document());
    try (XWPFDocument read = new XWPFDocument(new ByteArrayInputStream(first))) {
      XWPFTable table = read.getTables().get(0);
      assertTrue(table.getRow(0).isRepeatHeader());
      assertEquals("Diameter (mm)", table.getRow(0).getCell(1).getText());
      assertEquals("−2551", table.getRow(2).getCell(1).getText());
      assertEquals("Heading1", read.getParagraphs().get(0).getStyle());
    }
  }

  private static byte[] document() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (WordWriter writer = new WordWriter(Samples.PROVENANCE, Style.JOURNAL)) {
      writer.heading("Aims", 1);
      writer.paragraph("Text with \u0000 in it.");
      writer.table(Samples.kinds(), 1);
      writer.write(out);
    }
    return out.toByteArray();
  }
}
