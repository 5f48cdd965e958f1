package daubline.charts;

import daubline.base.Trail;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/** Draws text, lines and hatches of a figure. Sizes are points; no text is smaller than seven. */
final class Pen {

  /** The smallest lettering that journals accept at print size. */
  static final double SMALL = 7;
  /** Usual lettering. */
  static final double NORMAL = 8;
  /** Headings inside a figure. */
  static final double LARGE = 9;
  /** Usual line. */
  static final float THIN = 0.5f;
  /** Lines that carry data. */
  static final float THICK = 1.1f;

  private static final Pattern UNPRINTABLE = Pattern.compile("[\\p{Cntrl}\\p{Cs}\uFFFE\uFFFF]");

  private static final FontRenderContext METRICS = new FontRenderContext(new AffineTransform(), true, true);

  /** Where a text stands to its point. */
  enum At {
    LEFT(0), CENTRE(0.5), RIGHT(1);

    private final double share;

    At(double share) {
      this.share = share;
    }
  }

  private final Graphics2D g;
  private final Palette palette;

  Pen(Graphics2D g, Palette palette) {
    this.g = g;
    this.palette = palette;
    color(palette.ink()).line(THIN);
  }

  Palette palette() {
    return palette;
  }

  Graphics2D graphics() {
    return g;
  }

  Pen color(Color color) {
    g.setColor(color);
    return this;
  }

  Pen line(float width, float... dash) {
    g.setStroke(dash.length == 0 ? new BasicStroke(width)
        : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0));
    return this;
  }

  Pen stroke(BasicStroke stroke) {
    g.setStroke(stroke);
    return this;
  }

  Pen draw(Shape shape) {
    g.draw(shape);
    return this;
  }

  Pen fill(Shape shape) {
    g.fill(shape);
    return this;
  }

  Pen line(double x1, double y1, double x2, double y2) {
    return draw(new Line2D.Double(x1, y1, x2, y2));
  }

  /** Text with its baseline at y. */
  Pen text(String text, double x, double y, double size, At at) {
    String shown = legible(Lettering.told(text));
    if (!shown.isEmpty()) {
      g.setFont(font(shown, size));
      g.drawString(shown, (float) (x - measured(shown, size) * at.share), (float) y);
    }
    return this;
  }

  /** The text without control characters and halves of pairs, which no file of a figure can hold. */
  static String legible(String text) {
    return UNPRINTABLE.matcher(text).replaceAll("\uFFFD");
  }

  /** Text on a piece of paper colour, so that lines behind it do not disturb. */
  Pen textOnPaper(String text, double x, double y, double size, At at) {
    double width = width(text, size);
    Color ink = g.getColor();
    color(palette.paper()).fill(new Rectangle2D.Double(x - width * at.share - 1, y - size * 0.8, width + 2, size));
    return color(ink).text(text, x, y, size, at);
  }

  /** Text that rises, its end or start at a point. */
  Pen turned(String text, double x, double y, double size, double degrees, At at) {
    AffineTransform before = g.getTransform();
    g.translate(x, y);
    g.rotate(Math.toRadians(degrees));
    text(text, 0, 0, size, at);
    g.setTransform(before);
    return this;
  }

  /** Lines of text, the first baseline at y; returns the y after the last. */
  double lines(List<String> lines, double x, double y, double size, At at) {
    double next = y;
    for (String line : lines) {
      text(line, x, next, size, at);
      next += size * 1.2;
    }
    return next;
  }

  /** Parallel lines inside a shape, by which areas are told apart without colour. */
  Pen hatch(Shape shape, int kind, double spacing) {
    Graphics2D inside = (Graphics2D) g.create();
    inside.clip(shape);
    Rectangle2D b = shape.getBounds2D();
    double reach = b.getWidth() + b.getHeight();
    for (double d = spacing / 2; d < reach; d += spacing) {
      switch (kind) {
        case 1 -> inside.draw(new Line2D.Double(b.getX() + d, b.getY(), b.getX() + d - b.getHeight(), b.getMaxY()));
        case 2 -> inside.draw(new Line2D.Double(b.getX() + d - b.getHeight(), b.getY(), b.getX() + d, b.getMaxY()));
        case 3 -> inside.draw(new Line2D.Double(b.getX(), b.getY() + d, b.getMaxX(), b.getY() + d));
        case 4 -> inside.draw(new Line2D.Double(b.getX() + d, b.getY(), b.getX() + d, b.getMaxY()));
        default -> {
          // kind 0 has no lines
        }
      }
    }
    inside.dispose();
    return this;
  }

  /** Names a mark that shows a number, with where it comes from; a pointer and the keyboard find it. */
  Pen spot(Shape shape, Supplier<Trail> from) {
    Spots.note(g, shape, from);
    return this;
  }

  /** The same for a mark of a size around a place. */
  Pen spot(double x, double y, double radius, Supplier<Trail> from) {
    return spot(new Rectangle2D.Double(x - radius, y - radius, 2 * radius, 2 * radius), from);
  }

  static Font font(String text, double size) {
    return Fonts.size(text, Math.max(SMALL, size));
  }

  /** The width of a text in points. */
  static double width(String english, double size) {
    return measured(Lettering.told(english), size);
  }

  private static double measured(String text, double size) {
    return text.isEmpty() ? 0 : font(text, size).getStringBounds(text, METRICS).getWidth();
  }

  /** The text, cut with an ellipsis where it is wider than allowed. */
  static String fit(String english, double size, double width) {
    String text = Lettering.told(english);
    if (measured(text, size) <= width) {
      return text;
    }
    int length = text.length();
    while (length > 1 && measured(text.substring(0, length).strip() + "…", size) > width) {
      length--;
    }
    return text.substring(0, length).strip() + "…";
  }

  /** The text in lines no wider than allowed, broken between words. */
  static List<String> wrap(String text, double size, double width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : Lettering.told(text).split(" ")) {
      if (line.length() > 0 && measured(line + " " + word, size) > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
