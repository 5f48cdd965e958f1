package daubline.charts;

import daubline.engine.inference.Verdict;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.EnumMap;
import java.util.Map;

/** The shapes of verdicts: full disc consistent, disc with bar not consistent, ring not tested. */
final class VerdictMark {

  private VerdictMark() {
  }

  static void draw(Pen pen, Verdict verdict, double x, double y, double radius) {
    Palette palette = pen.palette();
    Ellipse2D disc = new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    switch (verdict) {
      case CONSISTENT -> pen.color(palette.color(2)).fill(disc);
      case NOT_CONSISTENT -> pen.color(palette.color(3)).fill(disc).color(palette.paper()).line((float) (radius * 0.5))
          .draw(new Line2D.Double(x - radius, y, x + radius, y));
      case NOT_TESTED -> pen.color(palette.quiet()).line(0.7f).draw(disc);
    }
    pen.color(palette.ink());
  }

  /** The key in one line from x on. */
  static void key(Pen pen, double x, double y) {
    double next = x;
    for (Map.Entry<Verdict, String> word : words().entrySet()) {
      draw(pen, word.getKey(), next + 4, y - 2.6, 3.6);
      pen.text(word.getValue(), next + 11, y, Pen.NORMAL, Pen.At.LEFT);
      next += 24 + Pen.width(word.getValue(), Pen.NORMAL);
    }
  }

  private static Map<Verdict, String> words() {
    Map<Verdict, String> words = new EnumMap<>(Verdict.class);
    for (Verdict verdict : Verdict.values()) {
      words.put(verdict, verdict.word());
    }
    return words;
  }
}
