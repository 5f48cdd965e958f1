package daubline.record.print;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.text.Bidi;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * Sheets of paper in one PDF file: text, lines and bars in black. The place of things is measured in points from the upper
 * left corner. The same sheets are the same bytes, as no date is written into them.
 */
final class Paper implements Closeable {

  /** The smallest lettering that is printed, pt. */
  static final float SMALLEST = 11;
  /** Free edge, pt. */
  static final float EDGE = 36;

  private static final String TYPEFACE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  /** Signs that open and close: each stands beside the one that it is seen as from the other side. */
  private static final String PAIRS = "()[]{}<>«»";

  private final PDDocument document = new PDDocument();
  private final PDType0Font font;
  private final Set<String> lost = new TreeSet<>();
  private final float width;
  private final float height;
  private PDPageContentStream page;

  Paper(PaperSize size, boolean landscape, String title) throws IOException {
    width = landscape ? size.height() : size.width();
    height = landscape ? size.width() : size.height();
    try (InputStream in = PDDocument.class.getResourceAsStream(TYPEFACE)) {
      font = PDType0Font.load(document, in);
    }
    document.getDocumentInformation().setTitle(title);
    document.getDocumentInformation().setProducer("Daubline");
    document.setDocumentId(title.hashCode() & 0xFFFF_FFFFL);
  }

  float width() {
    return width;
  }

  float height() {
    return height;
  }

  /** Begins a new sheet. */
  void sheet() throws IOException {
    if (page != null) {
      page.close();
    }
    PDPage sheet = new PDPage(new PDRectangle(width, height));
    document.addPage(sheet);
    page = new PDPageContentStream(document, sheet);
    page.setLineWidth(0.7f);
  }

  /**
   * Text with its baseline at a place. A text with signs that the typeface lacks is drawn in one of the machine; a sign that
   * none has is printed as a question mark and told by {@link #lost()}.
   */
  void text(String text, float x, float y, float size) throws IOException {
    if (size < SMALLEST) {
      throw new IllegalArgumentException("Lettering of " + size + " pt cannot be read in the field");
    }
    String shown = printable(text);
    if (!isOwn(shown)) {
      Outlines.fill(page, shown, x, height - y, size);
      return;
    }
    page.beginText();
    page.setFont(font, size);
    page.newLineAtOffset(x, height - y);
    page.showText(visual(shown));
    page.endText();
  }

  /** The signs that were printed as a question mark, since no typeface of this machine has them. */
  Set<String> lost() {
    return Set.copyOf(lost);
  }

  private String printable(String text) {
    StringBuilder out = new StringBuilder();
    text.replaceAll("\\s+", " ").codePoints().forEach(c -> {
      String sign = Character.toString(c);
      if (has(sign) || Outlines.has(c)) {
        out.append(sign);
      } else {
        lost.add(sign);
        out.append('?');
      }
    });
    return out.toString();
  }

  private boolean isOwn(String text) {
    return text.codePoints().allMatch(c -> has(Character.toString(c)));
  }

  /** The signs from left to right as they stand on paper: a run that is read from right to left is turned round. */
  private static String visual(String text) {
    if (!Bidi.requiresBidi(text.toCharArray(), 0, text.length())) {
      return text;
    }
    Bidi order = new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
    byte[] levels = new byte[order.getRunCount()];
    String[] runs = new String[levels.length];
    for (int i = 0; i < runs.length; i++) {
      String run = text.substring(order.getRunStart(i), order.getRunLimit(i));
      levels[i] = (byte) order.getRunLevel(i);
      runs[i] = levels[i] % 2 == 0 ? run : turned(run);
    }
    Bidi.reorderVisually(levels, 0, runs, 0, runs.length);
    return String.join("", runs);
  }

  private static String turned(String run) {
    StringBuilder out = new StringBuilder(new StringBuilder(run).reverse());
    for (int i = 0; i < out.length(); i++) {
      int pair = PAIRS.indexOf(out.charAt(i));
      if (pair >= 0) {
        out.setCharAt(i, PAIRS.charAt(pair ^ 1));
      }
    }
    return out.toString();
  }

  private boolean has(String sign) {
    try {
      font.encode(sign);
      return true;
    } catch (IOException | IllegalArgumentException e) {
      return false;
    }
  }

  /** The width of a text, pt. */
  float measure(String text, float size) {
    String shown = printable(text);
    if (!isOwn(shown)) {
      return Outlines.measure(shown, size);
    }
    try {
      return font.getStringWidth(visual(shown)) / 1000 * size;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A text in lines no wider than allowed, broken between words. */
  List<String> wrap(String text, float size, float wide) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split("\\s+")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && measure(longer, size) > wide) {
        lines.add(line);
        longer = word;
      }
      line = longer;
    }
    lines.add(line);
    return lines;
  }

  /** A straight line. */
  void line(float x1, float y1, float x2, float y2) throws IOException {
    page.moveTo(x1, height - y1);
    page.lineTo(x2, height - y2);
    page.stroke();
  }

  /** An empty frame. */
  void frame(float x, float y, float wide, float tall) throws IOException {
    page.addRect(x, height - y - tall, wide, tall);
    page.stroke();
  }

  /** A filled bar. */
  void bar(float x, float y, float wide, float tall) throws IOException {
    page.addRect(x, height - y - tall, wide, tall);
    page.fill();
  }

  void save(OutputStream out) throws IOException {
    page.close();
    page = null;
    document.save(out);
  }

  @Override
  public void close() throws IOException {
    if (page != null) {
      page.close();
    }
    document.close();
  }
}
