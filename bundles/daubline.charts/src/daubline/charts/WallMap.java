package daubline.charts;

import daubline.analysis.StudyResults;
import daubline.analysis.record.WallData;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.base.WallStates;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The inner wall unrolled: what the fire did to it, by clock position and height; one figure for each sheet that was mapped. */
public final class WallMap implements FigureSpec {

  @Override
  public String id() {
    return "wall-map";
  }

  @Override
  public String title() {
    return "Wall by Clock and Height";
  }

  @Override
  public Optional<Figure> build(StudyResults results) {
    return all(results).stream().map(NamedFigure::figure).findFirst();
  }

  /** The wall of one sheet; empty when nothing was mapped. */
  public static Optional<Figure> of(WallData wall) {
    return wall.zones().isEmpty() ? Optional.empty() : Optional.of(new Drawing(wall));
  }

  @Override
  public List<NamedFigure> all(StudyResults results) {
    List<NamedFigure> figures = new ArrayList<>();
    for (WallData wall : results.snapshot().record().walls()) {
      of(wall).ifPresent(figure -> figures.add(new NamedFigure(FileNames.of(id() + "-" + wall.id()), title() + ": " + wall.name(), figure)));
    }
    return figures;
  }

  private record Drawing(WallData wall) implements Figure {

    private static final List<String> STATES = WallStates.STANDARD;
    private static final double LEFT = 42;
    private static final double BOTTOM = 30;
    private static final double KEY = 16;
    private static final double STEP = 0.1;

    @Override
    public String caption() {
      return "Inner wall of " + wall.name() + (wall.excavated() ? " (excavated)" : " (as found after the fire)") + ", unrolled: clock positions with the front "
          + "at 6 in the middle, height above the floor. Each state of the wall has a hatch and a letter of its own; where nothing is drawn, nothing was recorded.";
    }

    @Override
    public double aspect() {
      return 0.62;
    }

    @Override
    public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
      Pen pen = new Pen(g, palette);
      List<String> states = wall.zones().stream().map(WallData.Zone::state).distinct().toList();
      double top = area.getY() + KEY * ((states.size() + 3) / 4) + 4;
      Rectangle2D plot = new Rectangle2D.Double(area.getX() + LEFT, top, area.getWidth() - LEFT - 8, area.getMaxY() - BOTTOM - top);
      double high = Math.ceil(wall.zones().stream().mapToDouble(WallData.Zone::high).max().orElse(STEP) / STEP - 1e-9) * STEP;
      double low = Math.min(0, Math.floor(wall.zones().stream().mapToDouble(WallData.Zone::low).min().orElse(0) / STEP) * STEP);
      axes(pen, plot, low, high);
      for (WallData.Zone zone : wall.zones()) {
        double width = plot.getWidth() / 12;
        double y = plot.getMaxY() - (zone.high() - low) / (high - low) * plot.getHeight();
        Rectangle2D shape = new Rectangle2D.Double(plot.getX() + column(zone.clock()) * width, y, width, (zone.high() - zone.low()) / (high - low) * plot.getHeight());
        patch(pen, zone.state(), shape);
        pen.spot(shape, () -> Trail.entry(zone.state() + " at clock position " + zone.clock() + ", " + wall.name(), Printed.fixed(zone.low() * 1000, 0) + "–" + Printed.fixed(zone.high() * 1000, 0)
            + " mm above the floor", zone.id()));
      }
      pen.color(palette.ink()).line(0.8f).draw(plot);
      for (int i = 0; i < states.size(); i++) {
        double x = plot.getX() + i % 4 * plot.getWidth() / 4;
        double y = area.getY() + i / 4 * KEY;
        patch(pen, states.get(i), new Rectangle2D.Double(x, y, 16, 12));
        pen.color(palette.ink()).text(Pen.fit(states.get(i), Pen.NORMAL, plot.getWidth() / 4 - 24), x + 20, y + 9, Pen.NORMAL, Pen.At.LEFT);
      }
    }

    /** 12 stands at the left edge, so that 6, the front, stands in the middle. */
    private static int column(int clock) {
      return clock % 12;
    }

    private void axes(Pen pen, Rectangle2D plot, double low, double high) {
      double width = plot.getWidth() / 12;
      for (int clock = 1; clock <= 12; clock++) {
        double x = plot.getX() + (column(clock) + 0.5) * width;
        pen.color(pen.palette().ink()).text(Integer.toString(clock), x, plot.getMaxY() + 11, Pen.NORMAL, Pen.At.CENTRE);
      }
      pen.text("clock position (6 = front)", plot.getCenterX(), plot.getMaxY() + 24, Pen.NORMAL, Pen.At.CENTRE);
      double every = high - low > 1 ? 2 * STEP : STEP;
      for (double h = low; h <= high + 1e-9; h += every) {
        double y = plot.getMaxY() - (h - low) / (high - low) * plot.getHeight();
        pen.color(pen.palette().quiet()).line(0.25f).line(plot.getX(), y, plot.getMaxX(), y).color(pen.palette().ink())
            .text(Printed.fixed(h * 1000, 0), plot.getX() - 4, y + 2.5, Pen.SMALL, Pen.At.RIGHT);
      }
      pen.turned("height (mm)", plot.getX() - 32, plot.getCenterY(), Pen.NORMAL, -90, Pen.At.CENTRE);
    }

    /** A patch with fill, hatch and letter of its state; states that nobody foresaw have a letter and a hatch of their own. */
    private void patch(Pen pen, String state, Rectangle2D shape) {
      List<String> own = wall.zones().stream().map(WallData.Zone::state).distinct().filter(s -> !STATES.contains(s)).toList();
      int number = STATES.contains(state) ? STATES.indexOf(state) : STATES.size() + own.indexOf(state);
      Palette palette = pen.palette();
      pen.color(palette.paper()).fill(shape);
      pen.color(palette.color(number)).line(0.6f).hatch(shape, number % 5, number == 0 || number > 4 ? 2 : 4);
      if (number == 0) {
        pen.color(palette.color(0)).fill(shape);
      }
      pen.color(palette.ink()).line(0.4f).draw(shape);
      String letter = letter(state);
      if (shape.getHeight() >= 9) {
        letter(pen, letter, shape, number == 0);
      }
    }

    /** The first letter, or the first two where another state begins with the same one. */
    private String letter(String state) {
      boolean shared = wall.zones().stream().map(WallData.Zone::state).anyMatch(s -> !s.equals(state) && s.charAt(0) == state.charAt(0));
      return state.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + (shared ? state.substring(1, Math.min(2, state.length())) : "");
    }

    private static void letter(Pen pen, String letter, Rectangle2D shape, boolean onDark) {
      double y = shape.getCenterY() + 2.5;
      if (onDark) {
        pen.color(pen.palette().paper()).text(letter, shape.getCenterX(), y, Pen.SMALL, Pen.At.CENTRE);
      } else {
        pen.color(pen.palette().ink()).textOnPaper(letter, shape.getCenterX(), y, Pen.SMALL, Pen.At.CENTRE);
      }
    }
  }
}
