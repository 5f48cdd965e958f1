package daubline.charts;

import daubline.analysis.EvidenceData;
import daubline.analysis.Recovered;
import daubline.analysis.StudyResults;
import daubline.analysis.TrialData;
import daubline.base.Printed;
import daubline.base.RecoveredTotal;
import daubline.base.Trail;
import daubline.engine.inference.ClassMass;
import daubline.engine.inference.SheetData;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Shares of the weighed residue by class, excavated sheets above, trials below. */
final class ResidueShares implements FigureSpec {

  private static final double ROW = 17;
  private static final double HEAD = 16;
  private static final double AXIS = 26;
  private static final double KEY_LINE = 13;
  private static final int KEY_COLUMNS = 3;

  @Override
  public String id() {
    return "residue-shares";
  }

  @Override
  public String table() {
    return "residues";
  }

  @Override
  public String title() {
    return "Residues by Class";
  }

  @Override
  public Optional<Figure> build(StudyResults results) {
    List<Bar> evidence = results.snapshot().sheets().stream().map(EvidenceData::sheet).map(s -> Bar.of(s, false)).filter(Bar::isWeighed).toList();
    List<Bar> trials = results.snapshot().trials().stream().map(TrialData::found).map(s -> Bar.of(s, true)).filter(Bar::isWeighed).toList();
    return evidence.isEmpty() && trials.isEmpty() ? Optional.empty() : Optional.of(new Drawing(evidence, trials));
  }

  /** The weighed classes of one sheet. */
  private record Bar(String name, Map<String, Double> masses, int unweighed, RecoveredTotal all, List<ClassMass> residues) {

    /** The classes of a name, or all, with the entries they were weighed by. */
    Trail trail(String residue) {
      List<Trail> from = residues.stream().filter(r -> residue.isEmpty() || r.name().equals(residue)).map(ClassMass::trail).toList();
      double mass = residue.isEmpty() ? total() : masses.get(residue);
      return Trail.reckoned((residue.isEmpty() ? "All classes weighed" : residue) + ", " + name, residue.isEmpty() ? all.text() : Printed.number(mass, 3) + " kg, " + Printed.fixed(100 * mass / total(), 1) + " %",
          "", from);
    }

    static Bar of(SheetData sheet, boolean trial) {
      Map<String, Double> masses = new LinkedHashMap<>();
      int unweighed = 0;
      for (ClassMass residue : sheet.residues()) {
        if (residue.mass().isNumber() && residue.mass().value() > 0) {
          masses.merge(residue.name(), residue.mass().value(), Double::sum);
        } else if (residue.mass().isMissing()) {
          unweighed++;
        }
      }
      return new Bar(sheet.name(), masses, unweighed, Recovered.of(sheet, trial), sheet.residues());
    }

    boolean isWeighed() {
      return masses.size() > 1;
    }

    /** The total as it reads at the end of the bar: ≥ 12.3 kg, 40 %. */
    String reads() {
      boolean part = all.share() < 1;
      return (all.isLeast() ? "≥ " : "") + Printed.number(total(), 3) + " kg" + (part ? ", " + all.percent() : "") + (unweighed > 0 ? "*" : "");
    }

    double total() {
      return masses.values().stream().mapToDouble(Double::doubleValue).sum();
    }
  }

  static final class Drawing extends RowFigure {

    private final List<Bar> evidence;
    private final List<Bar> trials;
    private final List<String> classes;

    Drawing(List<Bar> evidence, List<Bar> trials) {
      super("Shares by mass of the residue classes that were weighed; the total stands at the right, ≥ where it is at least that: only "
          + "the share behind it was recovered, nobody states what share of the deposit was, or it was read with low confidence. Classes that were found but not weighed "
          + "are not zero: an asterisk after the total says that there are some.",
          (evidence.size() + trials.size()) * ROW + 2 * HEAD + AXIS + (classes(evidence, trials).size() + KEY_COLUMNS - 1) / KEY_COLUMNS * KEY_LINE + 4);
      this.evidence = evidence;
      this.trials = trials;
      this.classes = classes(evidence, trials);
    }

    private static List<String> classes(List<Bar> evidence, List<Bar> trials) {
      return Stream.concat(evidence.stream(), trials.stream()).flatMap(b -> b.masses().keySet().stream()).distinct().toList();
    }

    @Override
    public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
      Pen pen = new Pen(g, palette);
      double left = area.getX() + area.getWidth() * 0.3;
      double right = area.getMaxX() - 92;
      double y = bars(pen, "excavated", evidence, area, left, right, area.getY());
      y = bars(pen, "trials", trials, area, left, right, y);
      pen.color(palette.ink()).line(Pen.THIN).line(left, y + 2, right, y + 2);
      for (int share = 0; share <= 100; share += 25) {
        double x = left + (right - left) * share / 100;
        pen.line(x, y + 2, x, y + 5).text(share + " %", x, y + 13, Pen.SMALL, Pen.At.CENTRE);
      }
      key(pen, area, y + AXIS);
    }

    private double bars(Pen pen, String heading, List<Bar> bars, Rectangle2D area, double left, double right, double top) {
      if (bars.isEmpty()) {
        return top;
      }
      double y = top + HEAD;
      pen.color(pen.palette().ink()).text(heading, left, y - 5, Pen.NORMAL, Pen.At.LEFT);
      for (Bar bar : bars) {
        pen.color(pen.palette().ink()).text(Pen.fit(bar.name(), Pen.NORMAL, left - area.getX() - 6), left - 6, y + ROW / 2 + 2, Pen.NORMAL, Pen.At.RIGHT);
        double x = left;
        for (String name : classes) {
          double width = bar.masses().getOrDefault(name, 0.0) / bar.total() * (right - left);
          Rectangle2D part = new Rectangle2D.Double(x, y + 2, width, ROW - 5);
          area(pen, classes.indexOf(name), part);
          if (width > 0) {
            pen.spot(part, () -> bar.trail(name));
          }
          x += width;
        }
        pen.spot(new Rectangle2D.Double(area.getMaxX() - 88, y + 2, 88, ROW - 4), () -> bar.trail(""));
        pen.color(pen.palette().ink()).text(bar.reads(), area.getMaxX() - 2, y + ROW / 2 + 2,
            Pen.NORMAL, Pen.At.RIGHT);
        y += ROW;
      }
      return y;
    }

    /** Each class has a colour and a hatch of its own; together there are thirty. */
    static void area(Pen pen, int number, Rectangle2D shape) {
      if (shape.getWidth() <= 0) {
        return;
      }
      Palette palette = pen.palette();
      pen.color(palette.color(number)).fill(shape);
      pen.color(palette.paper()).line(0.7f).hatch(shape, Math.floorMod(number, 5), 4);
      pen.color(palette.ink()).line(0.4f).draw(shape);
    }

    private void key(Pen pen, Rectangle2D area, double top) {
      List<String> names = new ArrayList<>(classes);
      double column = area.getWidth() / KEY_COLUMNS;
      for (int i = 0; i < names.size(); i++) {
        double x = area.getX() + i % KEY_COLUMNS * column;
        double y = top + i / KEY_COLUMNS * KEY_LINE;
        area(pen, i, new Rectangle2D.Double(x, y, 14, 8));
        pen.color(pen.palette().ink()).text(Pen.fit(names.get(i), Pen.NORMAL, column - 24), x + 19, y + 7, Pen.NORMAL, Pen.At.LEFT);
      }
    }
  }
}
