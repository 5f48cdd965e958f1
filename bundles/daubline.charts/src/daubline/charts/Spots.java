package daubline.charts;

import daubline.base.Trail;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The marks of a figure that show a number, with where each stands and where it comes from. A figure names them to its pen
 * while it paints; they are kept only when somebody asks, so files of a figure know nothing of them.
 */
public final class Spots {

  private static final RenderingHints.Key KEY = new RenderingHints.Key(0x5907) {
    @Override
    public boolean isCompatibleValue(Object value) {
      return value instanceof Spots;
    }
  };

  /**
   * One mark.
   *
   * @param shape where it stands, in points of the area that was painted
   * @param from what it shows, with its value and origin
   */
  public record Spot(Shape shape, Supplier<Trail> from) {

    /** What it shows with its value and unit, in one line. */
    public String told() {
      Trail trail = from.get();
      return trail.value().isEmpty() ? trail.what() : trail.what() + ": " + trail.value();
    }
  }

  private final List<Spot> spots = new ArrayList<>();

  private Spots() {
  }

  /** What a figure shows when it is painted in an area. */
  public static List<Spot> of(Figure figure, Rectangle2D area) {
    Graphics2D g = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
    Spots all = new Spots();
    g.setRenderingHint(KEY, all);
    figure.paint(g, area, Palette.PRINT);
    g.dispose();
    return List.copyOf(all.spots);
  }

  /** Notes a mark, when somebody asks for them. */
  static void note(Graphics2D g, Shape shape, Supplier<Trail> from) {
    if (g.getRenderingHint(KEY) instanceof Spots spots) {
      spots.spots.add(new Spot(g.getTransform().createTransformedShape(shape), from));
    }
  }

  /** The mark at a place: the smallest of those that hold it, otherwise the nearest within a distance. */
  public static Optional<Spot> at(List<Spot> spots, double x, double y, double reach) {
    Point2D place = new Point2D.Double(x, y);
    return spots.stream().filter(s -> s.shape().contains(place)).min(Comparator.comparingDouble(Spots::size))
        .or(() -> spots.stream().filter(s -> distance(s, place) <= reach).min(Comparator.comparingDouble(s -> distance(s, place))));
  }

  private static double size(Spot spot) {
    Rectangle2D box = spot.shape().getBounds2D();
    return box.getWidth() * box.getHeight();
  }

  private static double distance(Spot spot, Point2D place) {
    Rectangle2D box = spot.shape().getBounds2D();
    double dx = Math.max(0, Math.max(box.getX() - place.getX(), place.getX() - box.getMaxX()));
    double dy = Math.max(0, Math.max(box.getY() - place.getY(), place.getY() - box.getMaxY()));
    return Math.hypot(dx, dy);
  }
}
