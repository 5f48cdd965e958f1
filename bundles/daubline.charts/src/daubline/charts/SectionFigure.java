package daubline.charts;

import daubline.analysis.EvidenceData;
import daubline.analysis.StudyResults;
import daubline.analysis.TrialData;
import daubline.base.Printed;
import daubline.engine.inference.Comparison;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Excavated furnace sections to scale with the remains of the trial that agrees best with each. */
final class SectionFigure implements FigureSpec {

  private static final int MOST = 6;

  @Override
  public String id() {
    return "sections";
  }

  @Override
  public String table() {
    return "dimensions";
  }

  @Override
  public String title() {
    return "Furnace Sections";
  }

  @Override
  public Optional<Figure> build(StudyResults results) {
    List<Panel> panels = new ArrayList<>();
    for (EvidenceData evidence : results.snapshot().sheets()) {
      Profile excavated = Profile.found(evidence.sheet());
      if (excavated.isDrawable()) {
        panels.add(new Panel(evidence.sheet().name(), excavated, bestTrial(results, evidence)));
      }
    }
    int left = Math.max(0, panels.size() - MOST);
    return panels.isEmpty() ? Optional.empty() : Optional.of(new Drawing(panels.subList(0, panels.size() - left), left));
  }

  private static Optional<TrialData> bestTrial(StudyResults results, EvidenceData evidence) {
    return results.comparisons().stream().filter(c -> c.sheet().equals(evidence.sheet().id()) && c.isTested())
        .sorted(Comparator.comparingDouble(Comparison::agreement).reversed().thenComparing(Comparison::trial))
        .flatMap(c -> results.snapshot().trial(c.trial()).stream()).filter(t -> Profile.found(t.found()).isDrawable()).findFirst();
  }

  private record Panel(String name, Profile excavated, Optional<TrialData> trial) {

    Profile found() {
      return trial.map(t -> Profile.found(t.found())).orElse(excavated);
    }

    Profile built() {
      return trial.map(Profile::built).orElse(excavated);
    }

    double width() {
      return Math.max(Math.max(excavated.outerDiameter(), found().outerDiameter()), positive(built().top()) + 2 * built().wallOr(0)) + 150;
    }

    double height() {
      return Math.max(Math.max(positive(excavated.height()), positive(found().height())), positive(built().height()));
    }

    double depth() {
      return Math.max(positive(excavated.pit()), positive(found().pit()));
    }

    private static double positive(double value) {
      return value > 0 ? value : 0;
    }
  }

  private static final class Drawing implements Figure {

    private static final double HEAD = 40;
    private static final double FOOT = 40;

    private final List<Panel> panels;
    private final int columns;
    private final int leftOut;

    Drawing(List<Panel> panels, int leftOut) {
      this.panels = List.copyOf(panels);
      this.leftOut = leftOut;
      this.columns = Math.min(3, panels.size());
    }

    @Override
    public String caption() {
      return "Excavated furnace sections, all to one scale: solid and hatched, excavated; dash-dotted, the line to which the wall is preserved; "
          + "dashed, the remains of the trial that agrees best, as found; dotted above the line, what was built for that trial and is not evidenced "
          + "by the remains. The circle is the air inlet. A height that is not stated is drawn as a stub."
          + (leftOut > 0 ? " " + leftOut + " more sheets give a base diameter and are not drawn." : "");
    }

    @Override
    public double widthMm() {
      return columns == 1 ? 90 : 170;
    }

    @Override
    public double aspect() {
      double design = FigureWriter.points(widthMm());
      return (rows() * rowHeight(design / columns) + FOOT) / design;
    }

    private int rows() {
      return (panels.size() + columns - 1) / columns;
    }

    private double scale(double width) {
      return width / panels.stream().mapToDouble(Panel::width).max().orElse(1);
    }

    private double rowHeight(double width) {
      double highest = panels.stream().mapToDouble(Panel::height).max().orElse(0);
      double deepest = panels.stream().mapToDouble(Panel::depth).max().orElse(0);
      return (highest + deepest) * scale(width) + HEAD;
    }

    @Override
    public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
      Pen pen = new Pen(g, palette);
      double width = area.getWidth() / columns;
      double deepest = panels.stream().mapToDouble(Panel::depth).max().orElse(0);
      for (int i = 0; i < panels.size(); i++) {
        double x = area.getX() + i % columns * width;
        double bottom = area.getY() + (i / columns + 1) * rowHeight(width);
        panel(pen, panels.get(i), x, bottom - 8 - deepest * scale(width), width);
        names(pen, panels.get(i), x, bottom - rowHeight(width), width);
      }
      foot(pen, area, scale(width));
    }

    private static void names(Pen pen, Panel panel, double x, double top, double width) {
      pen.color(pen.palette().ink()).text(Pen.fit(panel.name(), Pen.LARGE, width - 6), x + width / 2, top + 12, Pen.LARGE, Pen.At.CENTRE);
      panel.trial().ifPresent(t -> pen.color(pen.palette().color(1)).text(Pen.fit("dashed: " + t.name(), Pen.NORMAL, width - 6), x + width / 2, top + 23,
          Pen.NORMAL, Pen.At.CENTRE));
    }

    private void panel(Pen pen, Panel panel, double x, double floor, double width) {
      SectionDrawing drawing = new SectionDrawing(pen, x + width / 2, floor, scale(width));
      panel.trial().ifPresent(t -> drawing.conjectured(panel.built(), panel.excavated()));
      drawing.excavated(panel.excavated());
      panel.trial().ifPresent(t -> drawing.trial(panel.found()));
      drawing.floor(panel.excavated().outerDiameter() / 2 + 60);
      pen.spot(x + width / 2, floor - 6, 12, () -> panel.excavated().trail("diameter", panel.excavated().diameter()));
      pen.color(pen.palette().ink()).textOnPaper("Ø " + Printed.number(panel.excavated().diameter(), 3) + " mm", x + width / 2, floor - 4, Pen.SMALL,
          Pen.At.CENTRE);
    }

    private static void foot(Pen pen, Rectangle2D area, double scale) {
      double y = area.getMaxY() - 20;
      double length = scale * 500 < area.getWidth() / 3 ? 500 : 200;
      double x = area.getX() + 6;
      pen.color(pen.palette().ink()).line(0.6f);
      for (int i = 0; i < 5; i++) {
        Rectangle2D part = new Rectangle2D.Double(x + i * length / 5 * scale, y, length / 5 * scale, 3.5);
        if (i % 2 == 0) {
          pen.fill(part);
        }
        pen.draw(part);
      }
      pen.text("0", x, y - 3, Pen.SMALL, Pen.At.CENTRE).text(Printed.number(length) + " mm", x + length * scale, y - 3, Pen.SMALL, Pen.At.CENTRE);
      pen.text("solid: excavated  ·  dash-dotted: preserved to here  ·  dotted: built, not evidenced", area.getMaxX() - 4, y + 12, Pen.SMALL, Pen.At.RIGHT);
    }
  }
}
