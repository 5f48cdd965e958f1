package daubline.charts;

import daubline.analysis.StudyResults;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.engine.stats.Biplot;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Slags of the trials and of the evidence in the plane in which their oxides differ most, as ratios. */
final class BiplotFigure implements FigureSpec {

  @Override
  public String id() {
    return "slag-biplot";
  }

  @Override
  public String table() {
    return "chemistry";
  }

  @Override
  public String title() {
    return "Slags by the Ratios of Their Oxides";
  }

  @Override
  public Optional<Figure> build(StudyResults results) {
    SlagParts slags = SlagParts.of(results);
    double[][] rows = slags.slags().stream().map(SlagParts.Slag::shares).toArray(double[][]::new);
    boolean varies = Arrays.stream(rows).skip(1).anyMatch(row -> IntStream.range(0, row.length).anyMatch(i -> Math.abs(row[i] - rows[0][i]) > 1e-9));
    return rows.length < 3 || slags.parts().size() < 3 || !varies ? Optional.empty() : Optional.of(new Drawing(slags, Biplot.of(rows)));
  }

  private record Drawing(SlagParts slags, Biplot plot) implements Figure {

    private static final int MOST_NAMES = 14;
    private static final double KEY = 96;

    @Override
    public String caption() {
      long excavated = slags.slags().stream().filter(SlagParts.Slag::excavated).count();
      return "Bulk slags as centred log-ratios of " + String.join(", ", slags.parts().stream().map(Drawing::printed).toList()) + " in the plane of the first two "
          + "principal components: crosses and hatched field, " + excavated + " excavated analyses and their convex hull; marks, " + (slags.slags().size() - excavated) + " analyses of trials. "
          + "Near points have like ratios; an arrow points to where its oxide is high against the others. All iron as FeO"
          + (slags.below() == 0 ? "" : "; " + slags.below() + (slags.below() == 1 ? " value below its limit stands" : " values below their limits stand") + " as 0.65 of it")
          + (slags.leftOut() == 0 ? "." : "; " + slags.leftOut() + (slags.leftOut() == 1 ? " analysis lacks one of these oxides and is" : " analyses lack one of these oxides and are") + " left out.");
    }

    private static String printed(String symbol) {
      StringBuilder text = new StringBuilder();
      symbol.chars().forEach(c -> text.append(Character.isDigit(c) ? (char) ('₀' + c - '0') : (char) c));
      return text.toString();
    }

    @Override
    public double aspect() {
      return 0.72;
    }

    @Override
    public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
      Pen pen = new Pen(g, palette);
      Rectangle2D frame = new Rectangle2D.Double(area.getX() + 36, area.getY() + 8, area.getWidth() - 36 - KEY, area.getHeight() - 36);
      double reach = Arrays.stream(plot.scores()).flatMapToDouble(Arrays::stream).map(Math::abs).max().orElse(1) * 1.1;
      double scale = Math.min(frame.getWidth(), frame.getHeight()) / 2 / reach;
      axes(pen, frame, scale);
      rays(pen, frame, scale * reach * 0.9 / Arrays.stream(plot.rays()).mapToDouble(r -> Math.hypot(r[0], r[1])).max().orElse(1));
      points(pen, frame, scale);
      key(pen, area);
    }

    private static Point2D at(Rectangle2D frame, double[] xy, double scale) {
      return new Point2D.Double(frame.getCenterX() + xy[0] * scale, frame.getCenterY() - xy[1] * scale);
    }

    private void axes(Pen pen, Rectangle2D frame, double scale) {
      pen.color(pen.palette().ink()).line(Pen.THIN).draw(frame);
      double step = Ticks.step(frame.getWidth() / scale, 6);
      for (double v = -20 * step; v <= 20 * step; v += step) {
        double x = frame.getCenterX() + v * scale;
        double y = frame.getCenterY() - v * scale;
        if (frame.getMinX() + 4 < x && x < frame.getMaxX() - 4) {
          pen.line(x, frame.getMaxY(), x, frame.getMaxY() + 3).text(Ticks.label(v, step), x, frame.getMaxY() + 11, Pen.SMALL, Pen.At.CENTRE);
        }
        if (frame.getMinY() + 4 < y && y < frame.getMaxY() - 4) {
          pen.line(frame.getMinX(), y, frame.getMinX() - 3, y).text(Ticks.label(v, step), frame.getMinX() - 5, y + 2.5, Pen.SMALL, Pen.At.RIGHT);
        }
      }
      pen.color(pen.palette().quiet()).line(0.3f).line(frame.getMinX(), frame.getCenterY(), frame.getMaxX(), frame.getCenterY())
          .line(frame.getCenterX(), frame.getMinY(), frame.getCenterX(), frame.getMaxY()).color(pen.palette().ink());
      pen.text("component 1 (" + share(0) + " % of the variance)", frame.getCenterX(), frame.getMaxY() + 24, Pen.NORMAL, Pen.At.CENTRE)
          .turned("component 2 (" + share(1) + " %)", frame.getMinX() - 24, frame.getCenterY(), Pen.NORMAL, -90, Pen.At.CENTRE);
    }

    private String share(int axis) {
      return Printed.fixed(plot.shares()[axis] * 100, 0);
    }

    private void rays(Pen pen, Rectangle2D frame, double scale) {
      List<Rectangle2D> taken = new ArrayList<>();
      for (int i = 0; i < plot.rays().length; i++) {
        Point2D tip = at(frame, plot.rays()[i], scale);
        double angle = Math.atan2(tip.getY() - frame.getCenterY(), tip.getX() - frame.getCenterX());
        pen.color(pen.palette().quiet()).line(0.8f).line(frame.getCenterX(), frame.getCenterY(), tip.getX(), tip.getY());
        pen.line(tip.getX(), tip.getY(), tip.getX() - 5 * Math.cos(angle - 0.4), tip.getY() - 5 * Math.sin(angle - 0.4))
            .line(tip.getX(), tip.getY(), tip.getX() - 5 * Math.cos(angle + 0.4), tip.getY() - 5 * Math.sin(angle + 0.4));
        label(pen, printed(slags.parts().get(i)), tip, angle, taken);
      }
    }

    /** The name at the tip of an arrow, moved on where another stands already. */
    private static void label(Pen pen, String name, Point2D tip, double angle, List<Rectangle2D> taken) {
      double width = Pen.width(name, Pen.NORMAL) + 2;
      double x = Math.cos(angle) >= 0 ? tip.getX() + 3 : tip.getX() - 3 - width;
      Rectangle2D place = new Rectangle2D.Double(x, tip.getY() - 5 + 5 * Math.sin(angle), width, Pen.NORMAL + 1);
      double step = Math.sin(angle) >= 0 ? Pen.NORMAL + 1 : -Pen.NORMAL - 1;
      while (overlaps(place, taken)) {
        place = new Rectangle2D.Double(place.getX(), place.getY() + step, width, Pen.NORMAL + 1);
      }
      taken.add(place);
      pen.color(pen.palette().ink()).textOnPaper(name, place.getX(), place.getMaxY() - 1.5, Pen.NORMAL, Pen.At.LEFT);
    }

    private static boolean overlaps(Rectangle2D place, List<Rectangle2D> taken) {
      return taken.stream().anyMatch(place::intersects);
    }

    private List<String> trials() {
      return slags.slags().stream().filter(s -> !s.excavated()).map(SlagParts.Slag::of).distinct().toList();
    }

    private void points(Pen pen, Rectangle2D frame, double scale) {
      List<String> trials = trials();
      List<Point2D> excavated = IntStream.range(0, plot.scores().length).filter(i -> slags.slags().get(i).excavated())
          .mapToObj(i -> at(frame, plot.scores()[i], scale)).toList();
      field(pen, excavated);
      for (int i = 0; i < plot.scores().length; i++) {
        SlagParts.Slag slag = slags.slags().get(i);
        double[] score = plot.scores()[i];
        Point2D p = at(frame, score, scale);
        pen.spot(p.getX(), p.getY(), 4, () -> Trail.reckoned("Slag of " + slag.of() + " in the plane of log-ratios", Printed.number(score[0], 3) + "; " + Printed.number(score[1], 3),
            "centred log-ratios of " + String.join(", ", slags.parts()) + ", first two principal components over all slags drawn", List.of(slag.from())));
      }
      for (int i = 0; i < plot.scores().length; i++) {
        if (!slags.slags().get(i).excavated()) {
          Point2D p = at(frame, plot.scores()[i], scale);
          Mark.series(pen, trials.indexOf(slags.slags().get(i).of()), p.getX(), p.getY());
        }
      }
      excavated.forEach(p -> Mark.cross(pen, p.getX(), p.getY()));
    }

    /** The hull of the excavated analyses, under their crosses. */
    private static void field(Pen pen, List<Point2D> excavated) {
      Path2D hull = Hull.of(excavated);
      pen.color(pen.palette().quiet()).line(0.3f).hatch(hull, 1, 3.5).line(0.7f, 4, 2).draw(hull);
    }

    private void key(Pen pen, Rectangle2D area) {
      double x = area.getMaxX() - KEY + 14;
      double y = area.getY() + 16;
      if (slags.slags().stream().anyMatch(SlagParts.Slag::excavated)) {
        Mark.cross(pen, x, y - 3);
        pen.text("excavated", x + 9, y, Pen.NORMAL, Pen.At.LEFT);
      }
      List<String> trials = trials();
      for (int i = 0; i < Math.min(MOST_NAMES, trials.size()); i++) {
        y += 11;
        Mark.series(pen, i, x, y - 3);
        pen.color(pen.palette().ink()).text(Pen.fit(trials.get(i), Pen.NORMAL, area.getMaxX() - x - 10), x + 9, y, Pen.NORMAL, Pen.At.LEFT);
      }
      if (trials.size() > MOST_NAMES) {
        pen.text("and " + (trials.size() - MOST_NAMES) + " more", x + 9, y + 11, Pen.NORMAL, Pen.At.LEFT);
      }
    }
  }
}
