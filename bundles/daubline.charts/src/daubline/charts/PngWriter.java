package daubline.charts;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * Portable Network Graphics with the resolution written into the file.
 *
 * @param dpi dots per inch: 300 for the page, 600 for a line drawing
 */
public record PngWriter(int dpi) implements FigureWriter {

  private static final String FORMAT = "javax_imageio_png_1.0";
  private static final int LARGEST = 20_000;

  public PngWriter {
    if (dpi < 36 || dpi > 2400) {
      throw new IllegalArgumentException("A picture has 36 to 2400 dots per inch, not " + dpi);
    }
  }

  @Override
  public String ending() {
    return "png";
  }

  @Override
  public void write(Figure figure, String title, double widthMm, OutputStream out) throws IOException {
    BufferedImage image = image(figure, FigureWriter.points(widthMm), dpi / POINTS_PER_INCH, Palette.PRINT);
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    try (ImageOutputStream stream = new MemoryCacheImageOutputStream(out)) {
      writer.setOutput(stream);
      IIOMetadata metadata = writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), writer.getDefaultWriteParam());
      metadata.mergeTree(FORMAT, resolution());
      writer.write(new IIOImage(image, null, metadata));
    } finally {
      writer.dispose();
    }
  }

  private IIOMetadataNode resolution() {
    String perMetre = Long.toString(Math.round(dpi / MM_PER_INCH * 1000));
    IIOMetadataNode size = new IIOMetadataNode("pHYs");
    size.setAttribute("pixelsPerUnitXAxis", perMetre);
    size.setAttribute("pixelsPerUnitYAxis", perMetre);
    size.setAttribute("unitSpecifier", "meter");
    IIOMetadataNode root = new IIOMetadataNode(FORMAT);
    root.appendChild(size);
    return root;
  }

  /**
   * Paints a figure into an image, also for the window.
   *
   * @param figure what to paint
   * @param widthPoints the width in points
   * @param scale pixels per point
   * @param palette the colours
   */
  public static BufferedImage image(Figure figure, double widthPoints, double scale, Palette palette) {
    double heightPoints = figure.height(widthPoints);
    int width = (int) Math.clamp(Math.round(widthPoints * scale), 1, LARGEST);
    int height = (int) Math.clamp(Math.round(heightPoints * scale), 1, LARGEST);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    try {
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
      g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
      g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      g.scale(scale, scale);
      paint(figure, g, widthPoints, heightPoints, palette);
      return image;
    } finally {
      g.dispose();
    }
  }

  /** Paints the paper and the figure on it. */
  static void paint(Figure figure, Graphics2D g, double width, double height, Palette palette) {
    Rectangle2D area = new Rectangle2D.Double(0, 0, width, height);
    g.setColor(palette.paper());
    g.fill(area);
    figure.paint(g, area, palette);
  }
}
