package daubline.export.format;

import daubline.export.Cell;
import daubline.export.Column;
import daubline.export.Provenance;
import daubline.export.Style;
import daubline.export.Table;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;

/**
 * Writes a document of headings, paragraphs, tables and pictures, part by part, so that long tables need no memory. The same
 * content gives the same bytes.
 */
public final class WordWriter implements AutoCloseable {

  private static final double WIDEST = 60;
  /** How much wider bold letters are (Liberation Sans, measured). */
  private static final double BOLD = 1.15;
  /** Letters of a table that stand beside each other on the page. */
  private static final double LETTERS = 175;
  /** What a figure may be high so that its caption stands on the same page, mm. */
  private static final double HIGHEST = 150;
  /** A4 across less two margins of 2 cm, in twentieths of a point. */
  private static final int TEXT_WIDTH = 14_570;
  private static final int EMU_PER_POINT = 12_700;
  private static final String SECTION = "<w:sectPr><w:pgSz w:w=\"16838\" w:h=\"11906\" w:orient=\"landscape\"/>"
      + "<w:pgMar w:top=\"1134\" w:right=\"1134\" w:bottom=\"1134\" w:left=\"1134\" w:header=\"567\" w:footer=\"567\" w:gutter=\"0\"/></w:sectPr>";
  private static final String TABLE = "<w:tbl><w:tblPr><w:tblW w:w=\"" + TEXT_WIDTH + "\" w:type=\"dxa\"/><w:tblBorders>"
      + "<w:top w:val=\"single\" w:sz=\"8\" w:space=\"0\" w:color=\"auto\"/><w:bottom w:val=\"single\" w:sz=\"8\" w:space=\"0\" w:color=\"auto\"/>"
      + "<w:insideH w:val=\"single\" w:sz=\"2\" w:space=\"0\" w:color=\"BBBBBB\"/></w:tblBorders><w:tblLayout w:type=\"fixed\"/>"
      + "<w:tblCellMar><w:left w:w=\"60\" w:type=\"dxa\"/><w:right w:w=\"60\" w:type=\"dxa\"/></w:tblCellMar>";

  private final Provenance provenance;
  private final Style style;
  private final Path folder;
  private final Writer body;
  private final List<Path> pictures = new ArrayList<>();

  /** A document on A4 in landscape, for wide tables. */
  public WordWriter(Provenance provenance, Style style) throws IOException {
    this.provenance = provenance;
    this.style = style;
    this.folder = Files.createTempDirectory("daubline");
    this.body = Files.newBufferedWriter(folder.resolve("document.xml"));
    body.append(WordParts.DECLARATION).append("<w:document ").append(WordParts.NAMESPACES).append("><w:body>\n");
  }

  /** Adds a heading of level 1, 2 or 3. */
  public void heading(String text, int level) throws IOException {
    paragraph("Heading" + level, WordText.run(text, ""), text);
  }

  /** Adds a paragraph. */
  public void paragraph(String text) throws IOException {
    paragraph("Normal", WordText.run(text, ""), text);
  }

  private void paragraph(String styleId, String runs, String text) throws IOException {
    body.append("<w:p><w:pPr><w:pStyle w:val=\"").append(styleId).append("\"/>").append(WordText.isRightToLeft(text) ? "<w:bidi/>" : "").append("</w:pPr>")
        .append(runs).append("</w:p>\n");
  }

  /** Adds a table with caption above and notes below. */
  public void table(Table full, int number) throws IOException {
    Table table = PrintTable.of(full);
    paragraph("Caption", WordText.run(style.wording().apply("Table " + number) + ". " + table.title() + ". ", "<w:b/>") + WordText.run(table.caption(), ""), "");
    if (table.rows().isEmpty()) {
      paragraph(PrintTable.nothing(style));
      return;
    }
    body.append(TABLE).append("<w:tblCaption w:val=\"").append(Html.escape(table.title())).append("\"/></w:tblPr><w:tblGrid>");
    int[] widths = widths(table);
    for (int width : widths) {
      body.append("<w:gridCol w:w=\"").append(Integer.toString(width)).append("\"/>");
    }
    body.append("</w:tblGrid>\n");
    rows(table, widths);
    body.append("</w:tbl>\n");
    for (String note : PrintTable.notes(table, style)) {
      paragraph("TableNote", WordText.run(note, ""), note);
    }
    paragraph("");
  }

  private void rows(Table table, int[] widths) throws IOException {
    body.append("<w:tr><w:trPr><w:cantSplit/><w:tblHeader/></w:trPr>");
    for (int c = 0; c < widths.length; c++) {
      cell(table.columns().get(c), widths[c], WordText.run(table.columns().get(c).fullHeading(), "<w:b/>"), "");
    }
    body.append("</w:tr>\n");
    for (List<Cell> row : table.rows()) {
      body.append("<w:tr><w:trPr><w:cantSplit/></w:trPr>");
      for (int c = 0; c < widths.length; c++) {
        String text = style.print(row.get(c));
        String mark = row.get(c).note() == 0 ? "" : WordText.run(Integer.toString(row.get(c).note()), "<w:vertAlign w:val=\"superscript\"/>");
        cell(table.columns().get(c), widths[c], WordText.run(text, "") + mark, text);
      }
      body.append("</w:tr>\n");
    }
  }

  private void cell(Column column, int width, String runs, String text) throws IOException {
    body.append("<w:tc><w:tcPr><w:tcW w:w=\"").append(Integer.toString(width)).append("\" w:type=\"dxa\"/></w:tcPr>");
    paragraph(column.kind() == Column.Kind.NUMBER ? "TableNumber" : "TableText", runs, text);
    body.append("</w:tc>");
  }

  /** Columns as wide as their content asks for; where that is too wide together, none gives way below the words of its heading. */
  private static int[] widths(Table table) {
    double[] least = new double[table.columns().size()];
    double[] wanted = new double[least.length];
    for (int c = 0; c < wanted.length; c++) {
      int heading = Arrays.stream(table.columns().get(c).fullHeading().split(" ")).mapToInt(String::length).max().orElse(0);
      double mean = table.cells(c).stream().mapToInt(cell -> cell.text().length()).average().orElse(0);
      int longest = table.cells(c).stream().mapToInt(cell -> cell.text().length()).max().orElse(0);
      least[c] = Math.min(WIDEST, Math.max(heading * BOLD, 4)) + 2;
      wanted[c] = Math.max(least[c], Math.min(WIDEST, Math.min(longest, mean < 20 ? longest : mean * 1.3)) + 2);
    }
    double all = Arrays.stream(wanted).sum();
    double needed = Arrays.stream(least).sum();
    double give = all > LETTERS && needed < LETTERS ? (LETTERS - needed) / (all - needed) : 1;
    double sum = needed + (all - needed) * give;
    return IntStream.range(0, wanted.length).map(c -> (int) Math.round((least[c] + (wanted[c] - least[c]) * give) / sum * TEXT_WIDTH)).toArray();
  }

  /**
   * Adds a picture with its caption below.
   *
   * @param png the picture
   * @param widthMm its width; it is made smaller where it would be higher than the page
   * @param aspect height over width
   * @param caption the caption, which also stands for the picture where it is read aloud
   */
  public void picture(InputStream png, double widthMm, double aspect, String caption) throws IOException {
    int number = pictures.size() + 1;
    Path file = folder.resolve("figure" + number + ".png");
    Files.copy(png, file);
    pictures.add(file);
    long width = (long) (Math.min(widthMm, HIGHEST / aspect) / 25.4 * 72 * EMU_PER_POINT);
    String size = " cx=\"" + width + "\" cy=\"" + (long) (width * aspect) + "\"/>";
    body.append("<w:p><w:pPr><w:keepNext/></w:pPr><w:r><w:drawing><wp:inline distT=\"0\" distB=\"0\" distL=\"0\" distR=\"0\"><wp:extent").append(size)
        .append("<wp:docPr id=\"" + number + "\" name=\"Figure " + number + "\" descr=\"").append(Html.escape(caption))
        .append("\"/><a:graphic><a:graphicData uri=\"http://schemas.openxmlformats.org/drawingml/2006/picture\"><pic:pic><pic:nvPicPr><pic:cNvPr id=\"" + number
            + "\" name=\"figure" + number + ".png\"/><pic:cNvPicPr/></pic:nvPicPr><pic:blipFill><a:blip r:embed=\"" + WordParts.relation(number)
            + "\"/><a:stretch><a:fillRect/></a:stretch></pic:blipFill><pic:spPr><a:xfrm><a:off x=\"0\" y=\"0\"/><a:ext").append(size)
        .append("</a:xfrm><a:prstGeom prst=\"rect\"><a:avLst/></a:prstGeom></pic:spPr></pic:pic></a:graphicData></a:graphic></wp:inline></w:drawing></w:r></w:p>\n");
    paragraph("FigureCaption", WordText.run(caption, ""), "");
  }

  /** Writes the document; nothing can be added after that. */
  public void write(OutputStream out) throws IOException {
    body.append(SECTION).append("</w:body></w:document>\n");
    body.close();
    ZipArchiveOutputStream zip = new ZipArchiveOutputStream(out);
    part(zip, "[Content_Types].xml", WordParts.TYPES);
    part(zip, "_rels/.rels", WordParts.RELATIONS);
    part(zip, "docProps/core.xml", WordParts.properties(provenance));
    part(zip, "word/styles.xml", WordParts.STYLES);
    part(zip, "word/_rels/document.xml.rels", WordParts.related(pictures.size()));
    part(zip, "word/document.xml", folder.resolve("document.xml"));
    for (Path picture : pictures) {
      part(zip, "word/media/" + picture.getFileName(), picture);
    }
    zip.finish();
  }

  private void begin(ZipArchiveOutputStream zip, String name) throws IOException {
    zip.putArchiveEntry(SteadyZip.entry(name, provenance.when()));
  }

  private void part(ZipArchiveOutputStream zip, String name, String text) throws IOException {
    begin(zip, name);
    zip.write(text.getBytes(StandardCharsets.UTF_8));
    zip.closeArchiveEntry();
  }

  private void part(ZipArchiveOutputStream zip, String name, Path file) throws IOException {
    begin(zip, name);
    Files.copy(file, zip);
    zip.closeArchiveEntry();
  }

  @Override
  public void close() throws IOException {
    body.close();
    for (Path picture : pictures) {
      Files.deleteIfExists(picture);
    }
    Files.deleteIfExists(folder.resolve("document.xml"));
    Files.deleteIfExists(folder);
  }
}
