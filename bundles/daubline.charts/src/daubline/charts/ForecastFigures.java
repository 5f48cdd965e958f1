package daubline.charts;

import daubline.analysis.StudyResults;
import daubline.analysis.forecast.TrialForecast;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A figure of the publication that is made of the forecasts of all trials. */
final class ForecastFigures implements FigureSpec {

  private static final int MOST = 6;

  private final String id;
  private final String title;
  private final Function<List<TrialForecast>, Optional<Figure>> make;

  private ForecastFigures(String id, String title, Function<List<TrialForecast>, Optional<Figure>> make) {
    this.id = id;
    this.title = title;
    this.make = make;
  }

  /** All of them, in the order of the publication. */
  static List<FigureSpec> all() {
    return List.of(new ForecastFigures("shaft-profiles", "Predicted Heat and Gas", ForecastFigures::profiles),
        new ForecastFigures("slag-inlet", "Slag Against the Air Inlet", trials -> InletOrder.of(trials, "")),
        new ForecastFigures("forecast-observed", "Predicted and Observed", trials -> ForecastPlots.predictedAgainstObserved(burnt(trials))),
        new ForecastFigures("forecast-residuals", "What Predictions Left Over", trials -> ForecastPlots.residuals(burnt(trials))));
  }

  private static List<TrialForecast> burnt(List<TrialForecast> trials) {
    return trials.stream().filter(t -> t.plan().isBurnt()).toList();
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public Optional<Figure> build(StudyResults results) {
    return make.apply(results.snapshot().plans().forecasts());
  }

  private static Optional<Figure> profiles(List<TrialForecast> trials) {
    List<Figure> sections = trials.stream().flatMap(t -> ShaftSection.of(t).stream()).limit(MOST).toList();
    return sections.isEmpty() ? Optional.empty() : Optional.of(new Sheet(sections, trials.stream().filter(t -> t.forecast().isPresent())
        .map(TrialForecast::name).limit(MOST).toList(), (int) trials.stream().filter(t -> t.forecast().isPresent()).count() - sections.size()));
  }

  /** Sections of several furnaces, two beside each other. */
  private record Sheet(List<Figure> sections, List<String> names, int leftOut) implements Figure {

    private static final double GAP = 14;

    @Override
    public String caption() {
      return "Furnaces to scale, each to its own, with temperatures and gas at each height by the shaft model (explains, not validated for yield): solid up "
          + "to the line to which there is evidence, dotted above it. Hatched: where slag and bloom stand at the end of charging. The circle is the air inlet."
          + (leftOut > 0 ? " " + leftOut + " more trials are not drawn." : "");
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
