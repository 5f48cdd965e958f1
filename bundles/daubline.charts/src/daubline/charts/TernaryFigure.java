package daubline.charts;

import daubline.analysis.EvidenceData;
import daubline.analysis.StudyResults;
import daubline.analysis.TrialData;
import daubline.engine.inference.SheetData;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Slags of the trials beside the excavated field in the triangle of FeO, SiO2 and Al2O3. */
final class TernaryFigure implements FigureSpec {

  @Override
  public String id() {
    return "slag-ternary";
  }

  @Override
  public String table() {
    return "chemistry";
  }

  @Override
  public String title() {
    return "Slags in the System FeO–SiO₂–Al₂O₃";
  }

  @Override
  public Optional<Figure> build(StudyResults results) {
    List<OxideShares> excavated = results.snapshot().sheets().stream().map(EvidenceData::sheet).flatMap(s -> slags(s).stream()).toList();
    List<Group> trials = new ArrayList<>();
    for (TrialData trial : results.snapshot().trials()) {
      List<OxideShares> slags = slags(trial.found());
      if (!slags.isEmpty()) {
        trials.add(new Group(trial.name(), slags));
      }
    }
    return excavated.isEmpty() && trials.isEmpty() ? Optional.empty() : Optional.of(new Drawing(excavated, trials));
  }

  private static List<OxideShares> slags(SheetData sheet) {
    return sheet.analyses().stream().map(OxideShares::of).flatMap(Optional::stream).toList();
  }

  private record Group(String name, List<OxideShares> slags) {
  }

  private record Drawing(List<OxideShares> excavated, List<Group> trials) implements Figure {

    private static final double HEIGHT = Math.sqrt(3) / 2;
    private static final int MOST_NAMES = 14;
    private static final double LABEL_ROOM = 24;

    @Override
    public String caption() {
      int slags = trials.stream().mapToInt(t -> t.slags().size()).sum();
      return "Bulk slags in the system FeO–SiO₂–Al₂O₃, made to sum to 100 % by mass, all iron as FeO: crosses and hatched field, " + excavated.size()
          + " excavated analyses and their convex hull; marks, " + slags + " analyses of " + trials.size() + " trials. Analyses in which one of the "
          + "three was not determined are left out. Lines: liquidus in °C of the pure system by the process engine’s estimate (own formula, standard "
          + "uncertainty 20 K without alumina, growing to " + Math.round(LiquidusField.WORST_SIGMA) + " K, where the lines end); other oxides lower it." + (trials.size() > MOST_NAMES ? " The key names the first " + MOST_NAMES + " trials." : "");
    }

    @Override
    public double aspect() {
      return 0.78;
    }

    @Override
    public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
      Pen pen = new Pen(g, palette);
      double side = Math.min(area.getWidth() * 0.74, (area.getHeight() - 40) / HEIGHT) - 12;
      double x0 = area.getX() + 24;
      double y0 = area.getMaxY() - 26;
      frame(pen, x0, y0, side);
      liquidus(pen, x0, y0, side);
      field(pen, x0, y0, side);
      for (int i = 0; i < trials.size(); i++) {
        for (OxideShares slag : trials.get(i).slags()) {
          Point2D p = point(slag, x0, y0, side);
          pen.spot(p.getX(), p.getY(), 4, slag::trail);
          Mark.series(pen, i, p.getX(), p.getY());
        }
      }
      crosses(pen, x0, y0, side);
      key(pen, area, x0 + side * 0.72);
    }

    /** FeO at the left, SiO2 at the top, Al2O3 at the right. */
    private static Point2D point(OxideShares s, double x0, double y0, double side) {
      return new Point2D.Double(x0 + side * (s.al2o3() + s.sio2() / 2), y0 - side * HEIGHT * s.sio2());
    }

    private static void frame(Pen pen, double x0, double y0, double side) {
      for (int i = 1; i < 10; i++) {
        double t = i / 10.0;
        pen.color(pen.palette().quiet()).line(0.25f);
        line(pen, new OxideShares(1 - t, t, 0), new OxideShares(0, t, 1 - t), x0, y0, side);
        line(pen, new OxideShares(t, 1 - t, 0), new OxideShares(t, 0, 1 - t), x0, y0, side);
        line(pen, new OxideShares(1 - t, 0, t), new OxideShares(0, 1 - t, t), x0, y0, side);
        if (i % 2 == 0) {
          ticks(pen, t, x0, y0, side);
        }
      }
      pen.color(pen.palette().ink()).line(0.8f).draw(Mark.polygon(x0, y0, x0 + side / 2, y0 - side * HEIGHT, x0 + side, y0));
      pen.text("FeO", x0 - 4, y0 + 20, Pen.LARGE, Pen.At.CENTRE).text("Al₂O₃", x0 + side + 4, y0 + 20, Pen.LARGE, Pen.At.CENTRE)
          .text("SiO₂", x0 + side / 2, y0 - side * HEIGHT - 6, Pen.LARGE, Pen.At.CENTRE);
    }

    private static void ticks(Pen pen, double t, double x0, double y0, double side) {
      String percent = Integer.toString((int) Math.round(t * 100));
      Point2D sio2 = point(new OxideShares(0, t, 1 - t), x0, y0, side);
      Point2D feo = point(new OxideShares(t, 1 - t, 0), x0, y0, side);
      Point2D al2o3 = point(new OxideShares(1 - t, 0, t), x0, y0, side);
      pen.color(pen.palette().ink()).text(percent, sio2.getX() + 4, sio2.getY() + 2, Pen.SMALL, Pen.At.LEFT)
          .text(percent, feo.getX() - 4, feo.getY() + 2, Pen.SMALL, Pen.At.RIGHT).text(percent, al2o3.getX(), al2o3.getY() + 10, Pen.SMALL, Pen.At.CENTRE);
    }

    private static void line(Pen pen, OxideShares from, OxideShares to, double x0, double y0, double side) {
      Point2D a = point(from, x0, y0, side);
      Point2D b = point(to, x0, y0, side);
      pen.line(a.getX(), a.getY(), b.getX(), b.getY());
    }

    private void liquidus(Pen pen, double x0, double y0, double side) {
      List<LiquidusField.Contour> contours = LiquidusField.contours();
      for (LiquidusField.Contour contour : contours) {
        Path2D path = new Path2D.Double();
        for (OxideShares shares : contour.points()) {
          Point2D p = point(shares, x0, y0, side);
          if (path.getCurrentPoint() == null) {
            path.moveTo(p.getX(), p.getY());
          } else {
            path.lineTo(p.getX(), p.getY());
          }
        }
        pen.color(pen.palette().ink()).line(0.6f, 5, 1.5f).draw(path);
      }
      for (LiquidusField.Contour contour : contours) {
        Point2D p = contour.points().stream().map(s -> point(s, x0, y0, side)).max(Comparator.comparingDouble((Point2D at) -> room(at, x0, y0, side))
            .thenComparingDouble(Point2D::getX)).orElseThrow();
        pen.color(pen.palette().ink()).textOnPaper(Integer.toString(contour.celsius()), p.getX(), p.getY() + 2.5, Pen.SMALL, Pen.At.CENTRE);
      }
    }

    /** How far the nearest slag is from a point, as far as that matters for a label. */
    private double room(Point2D at, double x0, double y0, double side) {
      return Math.min(LABEL_ROOM, Stream.concat(excavated.stream(), trials.stream().flatMap(t -> t.slags().stream()))
          .mapToDouble(s -> point(s, x0, y0, side).distance(at)).min().orElse(LABEL_ROOM));
    }

    private void field(Pen pen, double x0, double y0, double side) {
      List<Point2D> points = excavated.stream().map(s -> point(s, x0, y0, side)).toList();
      Path2D hull = Hull.of(points);
      pen.color(pen.palette().quiet()).line(0.3f).hatch(hull, 1, 3.5).line(0.7f, 4, 2).draw(hull);
    }

    /** Drawn last, so that marks of trials do not hide them. */
    private void crosses(Pen pen, double x0, double y0, double side) {
      for (OxideShares slag : excavated) {
        Point2D p = point(slag, x0, y0, side);
        pen.spot(p.getX(), p.getY(), 4, slag::trail);
        Mark.cross(pen, p.getX(), p.getY());
      }
    }

    private void key(Pen pen, Rectangle2D area, double x) {
      double y = area.getY() + 12;
      if (!excavated.isEmpty()) {
        Mark.cross(pen, x, y - 3);
        pen.text("excavated (" + excavated.size() + ")", x + 9, y, Pen.NORMAL, Pen.At.LEFT);
      }
      for (int i = 0; i < Math.min(MOST_NAMES, trials.size()); i++) {
        y += 11;
        Mark.series(pen, i, x, y - 3);
        pen.color(pen.palette().ink()).text(Pen.fit(trials.get(i).name(), Pen.NORMAL, area.getMaxX() - x - 10), x + 9, y, Pen.NORMAL, Pen.At.LEFT);
      }
    }
  }
}
