package daubline.charts;

import daubline.base.Printed;
import daubline.base.Trail;
import daubline.engine.process.balance.ElementBalance;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** One element of one balance as a stream; heights are masses. */
final class BalanceStream {

  private static final double LEFT = 64;
  private static final double RIGHT = 94;
  private static final double KNOT = 7;
  private static final double LINE = 10;

  private final String trial;
  private final ElementBalance element;
  private final List<Trail> rests;
  private final double scale;

  /**
   * A stream.
   *
   * @param rests what the balance rests on
   * @param scale points for a kilogram
   */
  BalanceStream(String trial, ElementBalance element, List<Trail> rests, double scale) {
    this.trial = trial;
    this.rests = rests;
    this.element = element;
    this.scale = scale;
  }

  /** One end of the stream: its name with its mass, its height in points, and whether it is the remainder. */
  private record End(String label, double height, boolean remainder) {
  }

  void paint(Pen pen, Rectangle2D area) {
    List<End> left = ends(element.sources());
    List<End> right = ends(element.finds());
    String remainder = Printed.plusMinus(Math.abs(element.remainder()), element.sigma()) + " kg";
    if (element.remainder() > 0) {
      right.add(new End("not found " + remainder, element.remainder() * scale, true));
    } else if (element.remainder() < 0) {
      left.add(new End("not counted " + remainder, -element.remainder() * scale, true));
    }
    double middle = (area.getX() + LEFT + area.getMaxX() - RIGHT) / 2;
    double height = Math.max(element.in(), element.out()) * scale;
    double top = area.getCenterY() - height / 2;
    side(pen, left, area.getX() + LEFT, middle - KNOT / 2, top, area, true);
    side(pen, right, area.getMaxX() - RIGHT, middle + KNOT / 2, top, area, false);
    pen.color(pen.palette().ink()).fill(new Rectangle2D.Double(middle - KNOT / 2, top, KNOT, Math.max(0.5, height)));
  }

  private List<End> ends(List<ElementBalance.Entry> entries) {
    List<End> ends = new ArrayList<>();
    entries.stream().filter(e -> e.amount() > 0)
        .forEach(e -> ends.add(new End(e.what() + " " + (e.amount() < 0.005 ? "< 0.01" : Printed.fixed(e.amount(), 2)), e.amount() * scale, false)));
    return ends;
  }

  /** The bands of one side, each from its end to its place at the knot; ends are spread so that their labels have room. */
  private void side(Pen pen, List<End> ends, double outer, double knot, double top, Rectangle2D area, boolean isLeft) {
    double needed = ends.stream().mapToDouble(e -> Math.max(LINE, e.height())).sum() + 3 * (ends.size() - 1);
    double y = area.getCenterY() - needed / 2;
    double at = top;
    for (int i = 0; i < ends.size(); i++) {
      End end = ends.get(i);
      double room = Math.max(LINE, end.height());
      double from = y + (room - end.height()) / 2;
      band(pen, i, end, outer, from, knot, at);
      pen.spot(new Rectangle2D.Double(Math.min(outer, knot) - (isLeft ? LEFT : 0), y, Math.abs(knot - outer) + (isLeft ? LEFT : RIGHT), room), () -> trail(end));
      String label = Pen.fit(end.label(), Pen.SMALL, (isLeft ? LEFT : RIGHT) - 5);
      pen.color(pen.palette().ink()).text(label, isLeft ? outer - 4 : outer + 4, y + room / 2 + 2.5, Pen.SMALL, isLeft ? Pen.At.RIGHT : Pen.At.LEFT);
      y += room + 3;
      at += end.height();
    }
  }

  private Trail trail(End end) {
    return Trail.reckoned(element.element() + " of " + trial, end.label() + (end.remainder() ? "" : " kg"), end.remainder() ? "remainder = in − found, with its standard uncertainty"
        : "mass × share of the element", rests);
  }

  private static void band(Pen pen, int number, End end, double outer, double from, double knot, double at) {
    double bend = (outer + knot) / 2;
    Path2D band = new Path2D.Double();
    band.moveTo(outer, from);
    band.curveTo(bend, from, bend, at, knot, at);
    band.lineTo(knot, at + end.height());
    band.curveTo(bend, at + end.height(), bend, from + end.height(), outer, from + end.height());
    band.closePath();
    Palette palette = pen.palette();
    if (end.remainder()) {
      pen.color(palette.quiet()).line(0.4f).hatch(band, 1, 3).color(palette.ink()).line(0.8f, 3, 2).draw(band);
    } else {
      pen.color(palette.color(number + 1)).fill(band).color(palette.ink()).line(0.5f).draw(band);
    }
  }
}
