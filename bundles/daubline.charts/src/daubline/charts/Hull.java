package daubline.charts;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/** The convex hull of points in the plane, by Andrew's monotone chain. */
final class Hull {

  private Hull() {
  }

  /** The hull as a closed path; empty path when there are fewer than three points. */
  static Path2D of(List<Point2D> points) {
    Path2D path = new Path2D.Double();
    List<Point2D> sorted = new ArrayList<>(points);
    sorted.sort(Comparator.comparingDouble(Point2D::getX).thenComparingDouble(Point2D::getY));
    if (sorted.size() < 3) {
      return path;
    }
    List<Point2D> hull = new ArrayList<>(chain(sorted));
    List<Point2D> back = chain(sorted.reversed());
    hull.addAll(back.subList(1, back.size() - 1));
    path.moveTo(hull.get(0).getX(), hull.get(0).getY());
    hull.stream().skip(1).forEach(p -> path.lineTo(p.getX(), p.getY()));
    path.closePath();
    return path;
  }

  private static List<Point2D> chain(List<Point2D> sorted) {
    Deque<Point2D> chain = new ArrayDeque<>();
    for (Point2D point : sorted) {
      while (chain.size() >= 2 && turn(chain, point) <= 0) {
        chain.removeLast();
      }
      chain.addLast(point);
    }
    return List.copyOf(chain);
  }

  private static double turn(Deque<Point2D> chain, Point2D next) {
    Point2D last = chain.removeLast();
    Point2D before = chain.peekLast();
    chain.addLast(last);
    return (last.getX() - before.getX()) * (next.getY() - before.getY()) - (last.getY() - before.getY()) * (next.getX() - before.getX());
  }
}
