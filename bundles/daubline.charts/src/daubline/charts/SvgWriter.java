package daubline.charts;

import java.awt.Dimension;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Scalable Vector Graphics: text stays text, with a title and a description for programs that read aloud. */
public final class SvgWriter implements FigureWriter {

  private static final String SVG = "http://www.w3.org/2000/svg";

  @Override
  public String ending() {
    return "svg";
  }

  @Override
  public void write(Figure figure, String title, double widthMm, OutputStream out) throws IOException {
    double width = FigureWriter.points(widthMm);
    double height = figure.height(width);
    SVGGraphics2D g = graphics();
    g.setSVGCanvasSize(new Dimension((int) Math.ceil(width), (int) Math.ceil(height)));
    PngWriter.paint(figure, g, width, height, Palette.PRINT);
    Element root = g.getRoot();
    root.setAttributeNS(null, "width", mm(widthMm));
    root.setAttributeNS(null, "height", mm(widthMm * height / width));
    root.setAttributeNS(null, "viewBox", "0 0 " + number(width) + " " + number(height));
    root.setAttributeNS(null, "role", "img");
    describe(root, "desc", figure.caption());
    describe(root, "title", title);
    StringWriter text = new StringWriter();
    g.stream(root, text, true, false);
    Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    // the standard advises against a document type: some readers would fetch it
    writer.write(text.toString().replaceFirst("<!DOCTYPE[^>]*>\\s*", ""));
    writer.flush();
  }

  /** The words that stand inside a figure, a space between two pieces of lettering. */
  public static String lettering(Figure figure) {
    double width = FigureWriter.points(figure.widthMm());
    SVGGraphics2D g = graphics();
    PngWriter.paint(figure, g, width, figure.height(width), Palette.PRINT);
    NodeList texts = g.getRoot().getElementsByTagNameNS(SVG, "text");
    return IntStream.range(0, texts.getLength()).mapToObj(i -> texts.item(i).getTextContent()).collect(Collectors.joining(" "));
  }

  private static SVGGraphics2D graphics() {
    try {
      Document document = DocumentBuilderFactory.newDefaultNSInstance().newDocumentBuilder().getDOMImplementation().createDocument(SVG, "svg", null);
      SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
      context.setComment(null);
      context.setPrecision(2);
      return new SVGGraphics2D(context, false);
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("This Java cannot make XML documents", e);
    }
  }

  private static void describe(Element root, String name, String text) {
    Element element = root.getOwnerDocument().createElementNS(SVG, name);
    element.setTextContent(Pen.legible(text));
    root.insertBefore(element, root.getFirstChild());
  }

  private static String mm(double mm) {
    return number(mm) + "mm";
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
