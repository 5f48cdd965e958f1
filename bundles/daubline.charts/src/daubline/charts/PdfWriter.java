package daubline.charts;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * Portable Document Format on one page of the figure's size, with the typeface embedded.
 *
 * @param when the time written into the file
 */
public record PdfWriter(Instant when) implements FigureWriter {

  @Override
  public String ending() {
    return "pdf";
  }

  @Override
  public void write(Figure figure, String title, double widthMm, OutputStream out) throws IOException {
    pages(List.of(figure), title, widthMm, out);
  }

  /**
   * Writes figures as the pages of one file.
   *
   * @param figures one or more
   */
  public void pages(List<Figure> figures, String title, double widthMm, OutputStream out) throws IOException {
    try (PDDocument document = new PDDocument()) {
      describe(document, figures.get(0), title);
      for (Figure figure : figures) {
        page(document, figure, (float) FigureWriter.points(widthMm));
      }
      document.save(out);
    }
  }

  private static void page(PDDocument document, Figure figure, float width) throws IOException {
    float height = (float) figure.height(width);
    PDPage page = new PDPage(new PDRectangle(width, height));
    document.addPage(page);
    PdfBoxGraphics2D g = new PdfBoxGraphics2D(document, width, height);
    g.setFontTextDrawer(typeface());
    PngWriter.paint(figure, g, width, height, Palette.PRINT);
    g.dispose();
    try (PDPageContentStream content = new PDPageContentStream(document, page)) {
      content.drawForm(g.getXFormObject());
    }
  }

  private static PdfBoxGraphics2DFontTextDrawer typeface() throws IOException {
    PdfBoxGraphics2DFontTextDrawer drawer = new PdfBoxGraphics2DFontTextDrawer();
    try (InputStream file = Fonts.file()) {
      drawer.registerFont(Fonts.size(1).getFontName(java.util.Locale.ROOT), file);
      return drawer;
    }
  }

  private void describe(PDDocument document, Figure figure, String title) {
    PDDocumentInformation about = document.getDocumentInformation();
    about.setTitle(title);
    about.setSubject(figure.caption());
    about.setProducer("Daubline");
    about.setCreationDate(GregorianCalendar.from(when.atZone(ZoneOffset.UTC)));
    document.setDocumentId(figure.caption().hashCode() & 0xFFFF_FFFFL);
  }
}
