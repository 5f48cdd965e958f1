package daubline.export.format;

import daubline.export.Cell;
import daubline.export.Column;
import daubline.export.Provenance;
import daubline.export.Style;
import daubline.export.Table;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.util.Units;
import org.apache.poi.xwpf.usermodel.Document;
import org.apache.poi.xwpf.usermodel.ParagraphAlignment;
import org.apache.poi.xwpf.usermodel.VerticalAlign;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFRun;
import org.apache.poi.xwpf.usermodel.XWPFTable;
import org.apache.poi.xwpf.usermodel.XWPFTableCell;
import org.apache.poi.xwpf.usermodel.XWPFTableRow;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTPageMar;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTPageSz;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTSectPr;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTTblGrid;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTTblGridCol;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.STPageOrientation;

/** Writes a document of headings, paragraphs, tables and pictures. The same content gives the same bytes. */
public final class WordWriter implements AutoCloseable {

  private static final int BODY = 10;
  private static final int SMALL = 8;
  private static final double WIDEST = 60;
  /** A4 across less two margins of 2 cm, in twentieths of a point. */
  private static final int TEXT_WIDTH = 14_570;
  private static final int MARGIN = 1_134;
  private static final long A4_LONG = 16_838;
  private static final long A4_SHORT = 11_906;

  private final XWPFDocument document = new XWPFDocument();
  private final Provenance provenance;
  private final Style style;

  /** A document on A4 in landscape, for wide tables. */
  public WordWriter(Provenance provenance, Style style) {
    this.provenance = provenance;
    this.style = style;
    CTSectPr section = document.getDocument().getBody().addNewSectPr();
    CTPageSz size = section.addNewPgSz();
    size.setOrient(STPageOrientation.LANDSCAPE);
    size.setW(BigInteger.valueOf(A4_LONG));
    size.setH(BigInteger.valueOf(A4_SHORT));
    CTPageMar margins = section.addNewPgMar();
    for (var set : List.<Consumer<Object>>of(margins::setTop, margins::setBottom, margins::setLeft, margins::setRight)) {
      set.accept(BigInteger.valueOf(MARGIN));
    }
    WordStyles.addTo(document);
  }

  /** Adds a heading of level 1, 2 or 3. */
  public void heading(String text, int level) {
    XWPFParagraph paragraph = document.createParagraph();
    paragraph.setStyle("Heading" + level);
    keepWithNext(paragraph);
    put(paragraph, text, 18 - 2 * level).setBold(true);
  }

  /** Adds a paragraph. */
  public void paragraph(String text) {
    put(document.createParagraph(), text, BODY);
  }

  /** Adds a table with caption above and notes below. */
  public void table(Table full, int number) {
    Table table = PrintTable.of(full);
    XWPFParagraph caption = document.createParagraph();
    keepWithNext(caption);
    put(caption, "Table " + number + ". " + table.title() + ". ", BODY).setBold(true);
    put(caption, table.caption(), BODY);
    if (table.rows().isEmpty()) {
      paragraph(PrintTable.nothing());
      return;
    }
    fill(document.createTable(table.rows().size() + 1, table.columns().size()), table);
    for (String note : PrintTable.notes(table, style)) {
      put(document.createParagraph(), note, SMALL);
    }
    document.createParagraph();
  }

  private void fill(XWPFTable grid, Table table) {
    threeRules(grid);
    setWidths(grid, table);
    // asking the grid for its n-th row counts all rows before it each time
    List<XWPFTableRow> lines = grid.getRows();
    lines.get(0).setRepeatHeader(true);
    for (int c = 0; c < table.columns().size(); c++) {
      Column column = table.columns().get(c);
      cell(lines.get(0).getCell(c), column, column.fullHeading(), 0).setBold(true);
    }
    for (int r = 0; r < table.rows().size(); r++) {
      List<Cell> row = table.rows().get(r);
      lines.get(r + 1).setCantSplitRow(true);
      for (int c = 0; c < row.size(); c++) {
        cell(lines.get(r + 1).getCell(c), table.columns().get(c), style.print(row.get(c)), row.get(c).note());
      }
    }
  }

  /** Columns as wide as their content asks for, so that long text does not stand in narrow columns. */
  private static void setWidths(XWPFTable grid, Table table) {
    double[] wanted = new double[table.columns().size()];
    for (int c = 0; c < wanted.length; c++) {
      int heading = Arrays.stream(table.columns().get(c).fullHeading().split(" ")).mapToInt(String::length).max().orElse(0);
      double mean = table.cells(c).stream().mapToInt(cell -> cell.text().length()).average().orElse(0);
      int longest = table.cells(c).stream().mapToInt(cell -> cell.text().length()).max().orElse(0);
      wanted[c] = Math.max(Math.max(heading, 4), Math.min(longest, mean < 20 ? longest : mean * 1.3)) + 2;
    }
    double all = Arrays.stream(wanted).map(w -> Math.min(w, WIDEST)).sum();
    grid.setWidth(Integer.toString(TEXT_WIDTH));
    CTTblGrid columns = grid.getCTTbl().getTblGrid() == null ? grid.getCTTbl().addNewTblGrid() : grid.getCTTbl().getTblGrid();
    for (int c = 0; c < wanted.length; c++) {
      long width = Math.round(Math.min(wanted[c], WIDEST) / all * TEXT_WIDTH);
      CTTblGridCol column = c < columns.sizeOfGridColArray() ? columns.getGridColArray(c) : columns.addNewGridCol();
      column.setW(BigInteger.valueOf(width));
      for (var row : grid.getRows()) {
        row.getCell(c).setWidth(Long.toString(width));
      }
    }
  }

  private static void threeRules(XWPFTable grid) {
    grid.removeBorders();
    grid.setTopBorder(XWPFTable.XWPFBorderType.SINGLE, 8, 0, "auto");
    grid.setBottomBorder(XWPFTable.XWPFBorderType.SINGLE, 8, 0, "auto");
    grid.setInsideHBorder(XWPFTable.XWPFBorderType.SINGLE, 2, 0, "BBBBBB");
  }

  private static XWPFRun cell(XWPFTableCell cell, Column column, String text, int note) {
    XWPFParagraph paragraph = cell.getParagraphs().get(0);
    paragraph.setSpacingAfter(0);
    if (column.kind() == Column.Kind.NUMBER) {
      paragraph.setAlignment(ParagraphAlignment.RIGHT);
    }
    XWPFRun run = put(paragraph, text, SMALL);
    if (note > 0) {
      put(paragraph, Integer.toString(note), SMALL).setSubscript(VerticalAlign.SUPERSCRIPT);
    }
    return run;
  }

  /** The spacing first: it makes the properties that the other call takes for granted. */
  private static void keepWithNext(XWPFParagraph paragraph) {
    paragraph.setSpacingAfter(60);
    paragraph.setKeepNext(true);
  }

  private static XWPFRun put(XWPFParagraph paragraph, String text, int size) {
    XWPFRun run = paragraph.createRun();
    run.setFontSize(size);
    run.setText(CellText.storable(text));
    return run;
  }

  /**
   * Adds a picture with its caption below.
   *
   * @param png the picture
   * @param widthMm its width
   * @param aspect height over width
   * @param caption the caption, which also stands for the picture where it is read aloud
   */
  public void picture(InputStream png, double widthMm, double aspect, String caption) throws IOException {
    XWPFParagraph paragraph = document.createParagraph();
    keepWithNext(paragraph);
    int width = (int) (widthMm / 25.4 * 72 * Units.EMU_PER_POINT);
    try {
      var picture = paragraph.createRun().addPicture(png, Document.PICTURE_TYPE_PNG, "figure.png", width, (int) (width * aspect));
      picture.getCTPicture().getNvPicPr().getCNvPr().setDescr(CellText.storable(caption));
    } catch (InvalidFormatException e) {
      throw new IOException("The picture cannot be put into the document", e);
    }
    put(document.createParagraph(), caption, BODY);
  }

  /** Writes the document. */
  public void write(OutputStream out) throws IOException {
    POIXMLProperties.CoreProperties core = document.getProperties().getCoreProperties();
    core.setTitle(CellText.storable(provenance.study()));
    core.setCreator("Daubline " + provenance.version());
    core.setCreated(Optional.of(Date.from(provenance.when())));
    core.setModified(Optional.of(Date.from(provenance.when())));
    Path raw = Files.createTempFile("daubline", ".docx");
    try {
      try (OutputStream file = Files.newOutputStream(raw)) {
        document.write(file);
      }
      SteadyZip.copy(raw, provenance.when(), out);
    } finally {
      Files.deleteIfExists(raw);
    }
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}
