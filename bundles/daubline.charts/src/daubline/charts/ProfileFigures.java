package daubline.charts;

import daubline.analysis.StudyResults;
import daubline.analysis.forecast.TrialForecast;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Furnaces with predicted heat and gas at each height, as many sheets as it takes. */
final class ProfileFigures implements FigureSpec {

  private static final int ON_A_SHEET = 4;

  @Override
  public String id() {
    return "shaft-profiles";
  }

  @Override
  public String title() {
    return "Predicted Heat and Gas";
  }

  /** The first sheet. */
  @Override
  public Optional<Figure> build(StudyResults results) {
    return all(results).stream().map(NamedFigure::figure).findFirst();
  }

  @Override
  public List<NamedFigure> all(StudyResults results) {
    List<Figure> sections = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (TrialForecast trial : results.snapshot().plans().forecasts()) {
      ShaftSection.of(trial).ifPresent(section -> {
        sections.add(section);
        names.add(trial.name());
      });
    }
    List<NamedFigure> sheets = new ArrayList<>();
    for (int from = 0; from < sections.size(); from += ON_A_SHEET) {
      int to = Math.min(sections.size(), from + ON_A_SHEET);
      int number = from / ON_A_SHEET + 1;
      sheets.add(new NamedFigure(id() + (sections.size() > ON_A_SHEET ? "-" + number : ""), title() + (sections.size() > ON_A_SHEET ? ", Sheet " + number : ""),
          new Sheet(List.copyOf(sections.subList(from, to)), List.copyOf(names.subList(from, to)))));
    }
    return sheets;
  }

  /** Sections of several furnaces, two beside each other. */
  private record Sheet(List<Figure> sections, List<String> names) implements Figure {

    private static final double GAP = 14;

    @Override
    public String caption() {
      return "Furnaces to scale, each to its own, with temperatures and gas at each height by the shaft model (explains, not validated for yield): solid up "
          + "to the line to which there is evidence, dotted above it. Hatched: where slag and bloom stand at the end of charging. The circle is the air inlet.";
    }

    @Override
    public double aspect() {
      int rows = (sections.size() + 1) / 2;
      return rows * (sections.size() == 1 ? 0.84 : 0.44);
    }

    @Override
    public double widthMm() {
      return 170;
    }

    @Override
    public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
      int columns = Math.min(2, sections.size());
      int rows = (sections.size() + columns - 1) / columns;
      double width = area.getWidth() / columns;
      double height = area.getHeight() / rows;
      Pen pen = new Pen(g, palette);
      for (int i = 0; i < sections.size(); i++) {
        double x = area.getX() + i % columns * width;
        double y = area.getY() + i / columns * height;
        pen.color(palette.ink()).text(Pen.fit(names.get(i), Pen.LARGE, width - GAP), x + 4, y + 10, Pen.LARGE, Pen.At.LEFT);
        sections.get(i).paint(g, new Rectangle2D.Double(x, y + GAP, width - GAP, height - GAP), palette);
      }
    }
  }
}
