package daubline.charts;

import daubline.analysis.StudyResults;
import daubline.analysis.record.WallData;
import daubline.base.Printed;
import daubline.base.Trail;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The ground around a furnace with the residue of each square; one figure for each sheet that was mapped and class of residue. */
public final class SpreadMap implements FigureSpec {

  @Override
  public String id() {
    return "slag-spread";
  }

  @Override
  public String title() {
    return "Spread of Residue";
  }

  @Override
  public Optional<Figure> build(StudyResults results) {
    return all(results).stream().map(NamedFigure::figure).findFirst();
  }

  /**
   * The ground around the furnace of one sheet.
   *
   * @param residue name of a class of residue; of the first one mapped when there is none of it
   */
  public static Optional<Figure> of(WallData wall, String residue) {
    List<String> all = classes(wall);
    return all.isEmpty() ? Optional.empty() : Optional.of(drawing(wall, all.contains(residue) ? residue : all.get(0)));
  }

  private static List<String> classes(WallData wall) {
    return wall.squares().stream().map(WallData.Square::residue).distinct().toList();
  }

  private static Figure drawing(WallData wall, String residue) {
    return new Drawing(wall.name() + of(residue), wall.squares().stream().filter(s -> s.residue().equals(residue)).toList());
  }

  private static String of(String residue) {
    return residue.isEmpty() ? "" : ", " + residue;
  }

  @Override
  public List<NamedFigure> all(StudyResults results) {
    List<NamedFigure> figures = new ArrayList<>();
    for (WallData wall : results.snapshot().record().walls()) {
      for (String residue : classes(wall)) {
        figures.add(new NamedFigure(FileNames.of(id() + "-" + wall.id() + (residue.isEmpty() ? "" : "-" + residue)), title() + ": " + wall.name() + of(residue),
            drawing(wall, residue)));
      }
    }
    return figures;
  }

  private record Drawing(String what, List<WallData.Square> squares) implements Figure {

    private static final double BOTTOM = 26;

    @Override
    public String caption() {
      return "Residue on the ground around the furnace: " + what + ". Each square holds a disc whose area goes with the mass, and the mass in kilograms; a dash "
          + "stands where a square was not weighed. North is up; the ring with a cross is the middle of the furnace.";
    }

    @Override
    public double aspect() {
      return 1;
    }

    @Override
    public double widthMm() {
      return 90;
    }

    @Override
    public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
      Pen pen = new Pen(g, palette);
      double reach = Math.max(0.5, squares.stream().mapToDouble(s -> Math.max(Math.abs(s.east()), Math.abs(s.north())) + side(s) / 2).max().orElse(1));
      double size = Math.min(area.getWidth() - 8, area.getHeight() - BOTTOM);
      double scale = size / 2 / reach;
      double cx = area.getCenterX();
      double cy = area.getY() + size / 2;
      double most = squares.stream().filter(s -> s.mass().isNumber()).mapToDouble(s -> s.mass().value()).max().orElse(0);
      for (WallData.Square square : squares) {
        paint(pen, square, new Rectangle2D.Double(cx + (square.east() - side(square) / 2) * scale, cy - (square.north() + side(square) / 2) * scale,
            side(square) * scale, side(square) * scale), most);
      }
      Mark.RING.draw(pen.color(palette.ink()), cx, cy, 4);
      pen.line(0.7f).line(cx - 6, cy, cx + 6, cy).line(cx, cy - 6, cx, cy + 6);
      bar(pen, area, scale, reach);
    }

    private static double side(WallData.Square square) {
      return square.side() > 0 ? square.side() : 1;
    }

    private static void paint(Pen pen, WallData.Square square, Rectangle2D shape, double most) {
      pen.color(pen.palette().quiet()).line(0.4f).draw(shape);
      boolean isWeighed = square.mass().isNumber();
      pen.spot(shape, () -> Trail.entry("Residue " + Printed.number(square.east(), 3) + " m east, " + Printed.number(square.north(), 3) + " m north", isWeighed
          ? Printed.number(square.mass().value(), 3) + " kg" : square.mass().kind().word(), square.id()));
      if (isWeighed && most > 0) {
        double r = shape.getWidth() * 0.42 * Math.sqrt(Math.max(0, square.mass().value()) / most);
        Ellipse2D disc = new Ellipse2D.Double(shape.getCenterX() - r, shape.getCenterY() - r, 2 * r, 2 * r);
        pen.color(pen.palette().color(1)).line(0.5f).hatch(disc, 1, 2).line(0.8f).draw(disc);
      }
      pen.color(pen.palette().ink()).textOnPaper(isWeighed ? Printed.number(square.mass().value(), 2) : "–", shape.getCenterX(), shape.getMaxY() - 3, Pen.SMALL, Pen.At.CENTRE);
    }

    private static void bar(Pen pen, Rectangle2D area, double scale, double reach) {
      double metres = reach > 4 ? 2 : reach > 1.5 ? 1 : 0.5;
      double x = area.getX() + 4;
      double y = area.getMaxY() - 16;
      pen.color(pen.palette().ink()).line(1.2f).line(x, y, x + metres * scale, y).text(Printed.number(metres) + " m", x + metres * scale / 2, y + 11, Pen.SMALL, Pen.At.CENTRE);
      double n = area.getMaxX() - 12;
      pen.line(0.8f).line(n, y + 8, n, y - 8).line(n, y - 8, n - 3, y - 3).line(n, y - 8, n + 3, y - 3).text("N", n - 6, y - 2, Pen.SMALL, Pen.At.RIGHT);
    }
  }
}
